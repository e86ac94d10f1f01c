using Payday.Tests.Pages;
using Payday.Tests.Printing;
using Payday.Tests.Slips;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens;

[Collection(OneTerminal.Name)]
public class RoutineStepTests
{
    // The demo's payday is in March; what is due before it comes round again stands after December.
    private static readonly string[] Months = ["Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec", "Jan", "Feb"];

    [Theory]
    [InlineData("bills", "\u2713>After-school club")]
    public void Row_UnderTheCursorAndTicked_ShowsBothSigns(string step, string shows)
    {
        using var terminal = new DemoTerminal();
        Assert.DoesNotContain(terminal.Open(step).Lines, line => line.StartsWith(shows, StringComparison.Ordinal));
        Assert.Contains(terminal.Press(Key.Space).Lines, line => line.StartsWith(shows, StringComparison.Ordinal));
    }

    private static string OneLine(DemoTerminal terminal) => string.Join(' ', string.Join(' ', terminal.Lines).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    // What was done is no alarm, and neither it nor a refusal takes the place of the keys or of what is left to place.
    [Fact]
    public void Message_OfAStep_LeavesKeysAndSumAndIsNoAlarmWhereItIsNews()
    {
        foreach ((int width, int height) in ((int, int)[])[(80, 24), (60, 20)])
        {
            using var terminal = new DemoTerminal(width, height);
            terminal.Open("surplus").Press(Key.Space);
            Assert.True(terminal.Top.IsNews, terminal.Top.Message);
            Assert.Contains(terminal.Lines, line => line.StartsWith(" Taken from Dental plan (", StringComparison.Ordinal));
            Assert.Contains("Space put here", terminal.BottomLine, StringComparison.Ordinal);
            Assert.Contains(terminal.Lines, line => line.Contains("= 0.00, all placed", StringComparison.Ordinal));

            terminal.Press(Key.CursorLeft, Key.CursorLeft, Key.CursorLeft).Press([.. Enumerable.Repeat(Key.CursorDown, 20)]).Press(Key.Space);
            Assert.False(terminal.Top.IsNews, terminal.Top.Message);
            Assert.Contains("? ", terminal.BottomLine, StringComparison.Ordinal);
            Assert.Contains("nothing of it to tick yet", OneLine(terminal), StringComparison.Ordinal);
        }
    }

    // A debt could take more than there is: what limits it is the surplus.
    [Fact]
    public void Surplus_OnADebtThatCouldTakeMore_SaysThatAllOfItIsThere()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("surplus").Press(Key.CursorDown, Key.CursorDown);
        Assert.Contains("Dental plan: the whole surplus is placed here;", OneLine(terminal), StringComparison.Ordinal);
    }

    [Fact]
    public void Close_WithMoreOnADebt_SaysWhoPaysItAsNews()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("close").Press(Key.Enter);
        Assert.Equal("The payday is closed. Pay 246.46 to Dental plan yourself. v shows its slip and sheet.", terminal.Top.Message);
        Assert.True(terminal.Top.IsNews);
        Assert.Contains("Enter payday", terminal.BottomLine, StringComparison.Ordinal);

        string[] sheet = [.. terminal.Press(new Key('v'), Key.PageDown, Key.PageDown, Key.PageDown).Lines];
        Assert.Contains(sheet, line => line.Trim() == "To pay yourself: 246.46 to Dental plan");
    }

    // A heading is the last line of no page that goes on below it.
    [Fact]
    public void Home_OfAnyHeight_NeverEndsOnAHeading()
    {
        for (int height = 20; height < 34; height++)
        {
            using var terminal = new DemoTerminal(80, height);
            string[] lines = [.. terminal.Open("home").Lines];
            Assert.DoesNotContain(lines.SkipLast(1).TakeLast(2), line => line.Contains("── ", StringComparison.Ordinal) && !line.Contains("Looking", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Settings_OnlyOpened_SayNothingIsStored()
    {
        using var terminal = new DemoTerminal();
        terminal.Press(new Key('h'), Key.Enter);
        Assert.DoesNotContain(terminal.Lines, line => line.Trim() == "Stored.");
        Assert.Contains(terminal.Lines, line => line.Trim() == "Each change is stored as it is made.");
        terminal.Press(Key.Enter).Type("x").Press(Key.Enter);
        Assert.Contains(terminal.Lines, line => line.Trim() == "Stored.");
    }

    [Fact]
    public void Bills_SetAsideForSeveralDues_SayHowMany()
    {
        using var terminal = new DemoTerminal();
        Assert.Contains(terminal.Open("bills").Lines, line => line.Contains("23 Mar", StringComparison.Ordinal) && line.TrimEnd().EndsWith("116.00  2 dues", StringComparison.Ordinal));
        terminal.Press([.. Enumerable.Repeat(Key.CursorDown, 6)]);
        Assert.Contains("58.00 on 23 Mar, then 58.00 on 30 Mar.", OneLine(terminal), StringComparison.Ordinal);
    }

    [Fact]
    public void Bills_ThoseOfLater_AreInTheOrderOfTheirDates()
    {
        using var terminal = new DemoTerminal(80, 40);
        string[] later = [.. terminal.Open("bills").Lines.Where(line => line.TrimEnd().EndsWith(" not yet", StringComparison.Ordinal)).Select(line => line.Trim())];
        int[] after = [.. later.Select(line => Array.FindIndex(Months, month => line.Contains($" {month} ", StringComparison.Ordinal)))];
        Assert.True(after.Length > 5, string.Join('\n', later));
        Assert.Equal(after.Order(), after);
    }

    [Theory]
    [InlineData("bills", 20, "isn't due before the next payday")]
    [InlineData("debts", 2, "no minimum falls due before the next payday")]
    [InlineData("slip", 0, "Nothing is changed here")]
    public void Row_WithNothingToChange_SaysWhyItsKeysDoNothing(string step, int down, string why)
    {
        foreach (Key key in (Key[])[Key.Enter, Key.Space, new Key('5')])
        {
            using var terminal = new DemoTerminal(80, 40);
            terminal.Open(step).Press([.. Enumerable.Repeat(Key.CursorDown, down)]).Press(key);
            Assert.Contains(why, terminal.Top.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    public void Pots_WhenMoneyIsShort_ShowNamesAndWhy(int width, int height)
    {
        using var terminal = new DemoTerminal(width, height);
        terminal.Open("income").Press(Key.Enter).Type("1500").Press(Key.Enter, Key.CursorRight, Key.CursorRight, Key.CursorRight);
        Golden.Equal($"pots-short-{width}x{height}", terminal.Lines.Select(line => line.TrimEnd()));
    }

    [Fact]
    public void Withdrawal_MoreNotesThanThePotHas_AreRefused()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("withdrawal").Press(Key.Enter).Type("3").Press(Key.Enter);
        Assert.Equal("Food has 410.00, and its notes would come to 710.00; lower another first.", terminal.Top.Message);
        Assert.Empty(terminal.Session.Book.Draft!.Notes);
    }

    [Fact]
    public void Withdrawal_FewerOfOneAndMoreOfAnother_IsTaken()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("withdrawal").Press(Key.Tab, Key.Tab, Key.Enter).Type("4").Press(Key.Enter, Key.CursorUp, Key.CursorUp);
        terminal.Press(Key.Tab.WithShift, Key.Tab.WithShift, Key.Enter).Type("1").Press(Key.Enter);
        Assert.Empty(terminal.Top.Message);
        Assert.Single(terminal.Session.Book.Draft!.Notes);
    }

    [Fact]
    public void Debt_MoreThanIsOwed_IsRefusedWithTheMost()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("debts").Press(Key.Enter).Type("99999").Press(Key.Enter);
        Assert.Equal("That is more than is owed; at most 1,882.33.", terminal.Top.Message);
        terminal.Type("1882.33").Press(Key.Enter);
        Assert.Contains("paid off", string.Join(' ', terminal.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_OfOneHalfOfAPair_NamesTheOther()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("close").Press(Key.Enter, new Key('l'), Key.Enter);
        for (int i = 0; i < 40 && !terminal.Lines.Any(line => line is [_, '>', ..] && line.Contains("account: buffer", StringComparison.Ordinal)); i++)
        {
            terminal.Press(Key.CursorDown);
        }

        string shown = string.Join(' ', terminal.Press(new Key('u')).Lines.Select(line => line.Trim()));
        Assert.Contains("goes with it and stays as it is: 70.00 from cash: buffer to cash: Food.", shown, StringComparison.Ordinal);
        Assert.Contains("by taking the whole payday up again", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void OneOff_NameTooLong_SaysSo()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(new Key('a')).Type(new string('z', 61) + "=4").Press(Key.Enter);
        Assert.Equal("The name has 61 characters; shorten it to 60.", terminal.Top.Message);
    }

    [Fact]
    public void Papers_SavedAsPdf_SaysWhere()
    {
        using var folder = new ScratchFolder();
        using var terminal = new DemoTerminal();
        string slip = Path.Combine(folder.Path, "slip.pdf");
        terminal.Open("papers").Press(new Key('s')).Press([.. Enumerable.Repeat(Key.Backspace, 40)]).Type(slip).Press(Key.Enter);
        Assert.Equal($"Saved as {slip} and slip-filling.pdf.", terminal.Top.Message);
        Assert.Equal(["slip-filling.pdf", "slip.pdf"], Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void Papers_InLargePrint_AreLargeOnAFullSheet()
    {
        using var folder = new ScratchFolder();
        using var terminal = new DemoTerminal();
        string slip = Path.Combine(folder.Path, "slip.pdf");

        terminal.Open("papers").Press(Key.Space);
        Assert.Equal("Slip and filling sheet, large print", terminal.Top.Title);
        terminal.Press(new Key('s')).Press([.. Enumerable.Repeat(Key.Backspace, 40)]).Type(slip).Press(Key.Enter);

        foreach (string file in (string[])["slip.pdf", "slip-filling.pdf"])
        {
            Assert.All(ReadPage.Of(File.ReadAllBytes(Path.Combine(folder.Path, file))), page =>
            {
                Assert.Equal((612, 792), page.Size);
                Assert.InRange(page.SmallestType, 16, 18);
            });
        }

        Assert.Equal("Slip and filling sheet", terminal.Press(Key.Space).Top.Title);
    }

    [Fact]
    public void Papers_FillingSheetAlreadyThere_WritesNeither()
    {
        using var folder = new ScratchFolder();
        using var terminal = new DemoTerminal();
        string sheet = Path.Combine(folder.Path, "slip-filling.pdf");
        File.WriteAllText(sheet, "mine");
        terminal.Open("papers").Press(new Key('s')).Press([.. Enumerable.Repeat(Key.Backspace, 40)]).Type(Path.Combine(folder.Path, "slip.pdf")).Press(Key.Enter);
        Assert.Equal($"{sheet} is already there; give another name.", terminal.Top.Message);
        Assert.Single(Directory.GetFiles(folder.Path));
    }
}
