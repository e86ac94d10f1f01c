namespace Payday.Journeys;

/// <summary>A household of two incomes, nine bills, three debts and twelve pots, as a person would note it.</summary>
internal static class QuickStart
{
    /// <summary>Each list's lines, in the order in which they are asked for.</summary>
    public static (string Heading, string[] Lines)[] Lists { get; } =
    [
        ("Income sources", ["Odette 2287.64 2w 4 Dec", "Tobin 1418.27 25"]),
        ("Bills",
        [
            "Rent 1450 1", "Power 96 5", "Internet 63 12", "Phone 42 20", "Bus pass 72 28", "School 58 1",
            "Water 165 q 15 Jan", "Car cover 684 6m 9 Nov", "Licence 132 y 2 Feb",
        ]),
        ("Debts", ["Car loan 8400 6.9% 210 15", "Card 1846 23.5% 2% 12", "Dentist 540 0% 45 20"]),
        ("Pots",
        [
            "Food 100", "Fun 20", "Fares 15", "Pets 10", "Clothes 60 m", "Doctor 30 m", "Gifts 400 Dec", "Tyres 300 Apr", "Holiday 1200 Jul",
            "Savings 1..20", "Piano 10 x 50", "Reserve 2000 with 50",
        ]),
    ];

    /// <summary>All of it as one text.</summary>
    public static string Text => string.Join('\n', Lists.Select(list => $"{list.Heading}\n{string.Join('\n', list.Lines)}\n"));

    /// <summary>How many items there are.</summary>
    public static int Count => Lists.Sum(list => list.Lines.Length);
}
