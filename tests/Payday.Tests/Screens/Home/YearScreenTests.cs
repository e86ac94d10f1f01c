using System.Drawing;
using NodaTime;
using Payday.Core.Routines;
using Payday.Screens.Reviews;
using Payday.Screens.Shell;
using Payday.Tests.Pages;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Screens.Home;

/// <summary>Months and years of a household that has lived for one.</summary>
public sealed class YearScreenTests : IDisposable
{
    private readonly DemoBook demo = new(new LocalDate(2027, 5, 20));
    private readonly Hand hand;

    public YearScreenTests()
    {
        while (Routine.Next(demo.Session.Book).Value < demo.Session.Today)
        {
            demo.CloseOne();
        }

        hand = new Hand(new YearScreen(demo.Session));
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [InlineData(60, 20)]
    [InlineData(80, 24)]
    [InlineData(132, 40)]
    public void Month_OfAHouseholdThatHasLived_IsAsRecorded(int width, int height)
    {
        string[] first = hand.Press("Left").Shown(new Size(width, height));
        Golden.Equal($"months-{width}x{height}", [.. first, .. hand.Press("PgDn").Shown(new Size(width, height)), .. hand.Press("PgDn").Shown(new Size(width, height)).Select(TextFold.ToAscii)]);
    }

    [Theory]
    [InlineData(80, 24)]
    public void Year_AgainstTheLast_IsAsRecorded(int width, int height) =>
        Golden.Equal($"year-{width}x{height}", hand.Press("Enter").Shown(new Size(width, height)));

    [Fact]
    public void LeftAndRight_GoByWhatIsShown_AndStopWhereTheHouseholdBeginsAndToday()
    {
        Assert.Equal(("May 2027, so far", "Left"), (Title(), Turns()));
        Assert.Equal(("April 2027", "Left Right"), (Title("Left"), Turns()));
        Assert.Equal("May 2027, so far", Title("Right"));
        Assert.Equal(("Year 2027", "Left"), (Title("Enter"), Turns()));
        Assert.Equal(("Year 2026", "Right"), (Title("Left"), Turns()));
        Assert.Equal("May 2026", Title("Enter"));
        Assert.Equal(("March 2026", "Right"), (Title("Left", "Left"), Turns()));
        Assert.Equal(("Year 2027", "Left"), (Title("Enter", "Right"), Turns()));
    }

    [Theory]
    [InlineData("Left", "payday-2027-04.pdf", "April 2027")]
    [InlineData("Enter", "payday-2027.pdf", "2027")]
    public void Save_OfWhatIsShown_IsOnePageOfIt(string key, string offered, string title)
    {
        using var folder = new ScratchFolder();
        string file = folder.In("report.pdf");

        var edit = Assert.IsType<Way.Edit>(hand.Press(key).Top.Bindings.Single(binding => binding.Label == "PDF").Do());
        Assert.Equal((offered, null), (edit.Cell.Text, edit.Cell.Accept(file)));

        Assert.Equal($"Saved as {file}, Letter.", hand.Top.Message);
        Assert.Contains(title, Assert.Single(ReadPage.Of(File.ReadAllBytes(file))).Words);
        Assert.Equal($"{file} is already there; give another name.", edit.Cell.Accept(file));
    }

    private string Turns() => string.Join(' ', ((IEnumerable<string>)["Left", "Right"]).Where(key => hand.Shown(new Size(132, 24))[^1].Contains(key, StringComparison.Ordinal)));

    private string Title(params string[] keys) => hand.Press(keys).Shown(new Size(80, 24))[0].Trim();
}
