using System.Drawing;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.StatementTaking;
using Payday.Screens.Home;
using Payday.Screens.Statements;
using Payday.Tests.Commands;
using Payday.Tests.Printing;
using Payday.Tests.Screens.Setup;
using Payday.Tests.Slips;

namespace Payday.Tests.Screens.Weeks;

/// <summary>The demo household on 1 April, its paydays of March closed, and the bank's statement of March.</summary>
public sealed class StatementScreenTests : IDisposable
{
    private readonly ScratchFolder files = new();
    private readonly DemoBook demo = new(new LocalDate(2026, 4, 1));

    public StatementScreenTests()
    {
        demo.CloseOne();
        demo.CloseOne();
        demo.CloseOne();
        File.WriteAllText(files.In("march.csv"), MarchStatement.Csv());
    }

    public void Dispose()
    {
        demo.Dispose();
        files.Dispose();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Screens_OfAMonth_AreAsRecorded(int width, int height)
    {
        var size = new Size(width, height);
        var hand = new Hand(new StatementScreen(demo.Session));
        Golden.Equal($"statement-none-{width}x{height}", hand.Shown(size));
        hand.Press("Enter").Type(files.In("mar"));
        Golden.Equal($"statement-{width}x{height}", hand.Shown(size));
        hand.Press("Ctrl+A", "Up", "Up", "Up", "Up", "Enter").Pick("h").Press("Enter", "x");
        Golden.Equal($"statement-chosen-{width}x{height}", hand.Shown(size));
        hand.Press("c");
        Golden.Equal($"statement-take-{width}x{height}", hand.Shown(size));
    }

    [Fact]
    public void Chosen_IsThereAgain_AtAnotherStart_AndWrittenAtTheEndAlone()
    {
        int before = demo.Stored.Ledger.Movements.Count;
        Read().Press("Ctrl+A").To("Greenleaf").Press("Enter").Pick("h").Press("Enter");
        Assert.Equal(before, demo.Stored.Ledger.Movements.Count);
        Assert.Empty(demo.Stored.Weeks.Takings);

        var hand = new Hand(new HomeScreen(demo.Session));
        hand.Press("%");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.StartsWith('v') && line.Contains("Household goods, by card", StringComparison.Ordinal));
        hand.To("Quillby").Press("x", "c", "Enter");
        Assert.Equal("The statement is taken. So the bank has 19.99 less than it should on 31 Mar.", hand.Message);
        TakingOfStatements taking = Assert.Single(demo.Stored.Weeks.Takings);
        Assert.Equal((24, 4, 1), (taking.Lines.Length, taking.Lines.Count(line => line.Wrote is not null), taking.Lines.Count(line => line.IsLeft)));
        Assert.Empty(demo.Stored.Weeks.Forms);

        hand.Press("%", "u", "Enter");
        Assert.Equal("The statement is taken back.", hand.Message);
        Assert.Empty(demo.Stored.Weeks.StandingReconciliations);
    }

    [Fact]
    public void Rule_KeptOnALine_CountsTheNextTime_AndIsChangedAndDropped()
    {
        Hand hand = Read().To("Greenleaf");
        Assert.Contains("Pick what this line becomes first", hand.Press("#").Message, StringComparison.Ordinal);
        hand.Press("Enter").Pick("h").Press("Enter").To("Greenleaf").Press("#").Leave();
        Assert.Equal(["greenleaf grocer"], demo.Stored.Weeks.StatementRules.Select(rule => rule.Words));
        hand.Press("Del");
        hand = Read().To("Greenleaf");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("Household goods, by card?", StringComparison.Ordinal));
        hand.Press("Space");
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.StartsWith('v'));

        hand.Press("Ctrl+K", "Enter").Pick("b").Press("Enter");
        Assert.Equal(LineUse.For, demo.Stored.Weeks.StatementRules[0].Target.Use);
        hand.Press("a").Type("corner shop").Press("Right").Pick("l").Press("Enter");
        Assert.Equal(2, demo.Stored.Weeks.StatementRules.Length);
        Assert.NotNull(hand.Press("a").Try("..."));
        hand.Press("x", "x");
        Assert.Empty(demo.Stored.Weeks.StatementRules);
    }

    [Fact]
    public void Wrong_Input_IsSaid_AndNothingIsLost()
    {
        var hand = new Hand(new StatementScreen(demo.Session));
        Assert.Equal("No statement was taken yet.", hand.Press("u").Message);
        Assert.Contains("There is no file", hand.Press("Enter").Try(files.In("none.csv")), StringComparison.Ordinal);
        File.WriteAllText(files.In("may.csv"), "Dear customer,\n");
        Assert.Contains("march.csv, may.csv; type more of the name", hand.Press("Enter").Try(files.In("ma")), StringComparison.Ordinal);
        hand.Press("Enter").Type(files.In("may"));
        Assert.Contains(hand.Shown(new Size(80, 24)), line => line.Contains("Del forgets the file", StringComparison.Ordinal));
        hand.Press("Del", "Enter").Type(files.In("mar"));
        hand.To("Greenleaf").Press("Enter").Pick("i").Press("Enter");
        Assert.Empty(demo.Stored.Weeks.Takings);
    }

    [Fact]
    public void Asked_ByAFile_IsAnsweredByPicking_AndRemembered()
    {
        File.WriteAllText(files.In("list.csv"), "When;Who;Sum\n2026-03-30;Corner shop;12.50\n2026-03-31;Bakery;4.50\n");
        var hand = new Hand(new HomeScreen(demo.Session)).Press("%", "Enter").Type(files.In("list"));
        Assert.Contains("which way the money went", string.Join(' ', hand.Shown(new Size(80, 24))), StringComparison.Ordinal);
        hand.Press("Enter").To("Bakery").Press("x");
        Assert.Contains("@ types it", hand.Press("c").Message, StringComparison.Ordinal);
        hand.Press("@").Type("1").Press("c", "Enter");
        Assert.StartsWith("The statement is taken.", hand.Message, StringComparison.Ordinal);
        Assert.Single(demo.Stored.Weeks.Readings);
        File.WriteAllText(files.In("next.csv"), "When;Who;Sum\n2026-04-01;Corner shop;13.50\n");
        hand.Press("%", "Enter").Type(files.In("next")).To("Corner shop");
    }

    private Hand Read() => new Hand(new StatementScreen(demo.Session)).Press("Enter").Type(files.In("mar"));
}
