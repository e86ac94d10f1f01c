using System.Drawing;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Setup;

public sealed class SetupGoldenTests : IDisposable
{
    private readonly DemoBook demo = new();

    public static TheoryData<string, int, int> Screens => new()
    {
        { "parts", 80, 24 },
        { "settings", 80, 24 },
        { "settings", 60, 20 },
        { "sources", 80, 24 },
        { "bills", 80, 24 },
        { "bills", 60, 20 },
        { "bills", 120, 40 },
        { "debts", 80, 24 },
        { "pots", 80, 24 },
        { "pots", 60, 20 },
        { "pots", 120, 40 },
        { "bill", 80, 24 },
        { "bill", 60, 20 },
        { "debt", 80, 24 },
        { "pot", 80, 24 },
        { "new-source", 80, 24 },
        { "take-out", 80, 24 },
        { "lines-empty", 80, 24 },
        { "lines", 80, 24 },
        { "lines", 60, 20 },
        { "lines", 120, 40 },
        { "opening", 80, 24 },
    };

    public void Dispose() => demo.Dispose();

    [Theory]
    [MemberData(nameof(Screens))]
    public void Draw_OfTheDemo_IsAsRecorded(string name, int width, int height)
    {
        Hand hand = demo.Hand;
        _ = name switch
        {
            "settings" => hand.To("Settings").Press("Enter"),
            "sources" => hand.To("Income sources").Press("Enter"),
            "bills" => hand.To("Bills").Press("Enter"),
            "debts" => hand.To("Debts").Press("Enter"),
            "pots" => hand.To("Pots").Press("Enter"),
            "bill" => hand.To("Bills").Press("Enter", "Enter").To("Essential"),
            "debt" => hand.To("Debts").Press("Enter", "Enter"),
            "pot" => hand.To("Pots").Press("Enter", "Enter").To("Top note"),
            "new-source" => hand.To("Income sources").Press("Enter", "a"),
            "take-out" => hand.To("Pots").Press("Enter", "x"),
            "lines-empty" => hand.To("Pots").Press("Enter", "i"),
            "lines" => hand.To("Bills").Press("Enter", "i", "Enter").Type("Choir 12.50 every 2 weeks from 13 Mar", "Water 165 q 15 May", "Milk 6 every 2nd Friday", "Allotment 38", "Bells", ""),
            "opening" => hand.To("Opening").Press("Enter"),
            _ => hand,
        };
        Golden.Equal($"{name}-{width}x{height}", hand.Shown(new Size(width, height)));
    }
}
