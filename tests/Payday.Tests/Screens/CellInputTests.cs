using Payday.Screens.Shell;
using Payday.Screens.Terminals;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens;

[Collection(OneTerminal.Name)]
public class CellInputTests
{
    public static TheoryData<string> Bad =>
        ["abc", "12.345", "123456789012345678901234567890", "-5", "12,,5", "1+", "99999999999999999+1"];

    [Theory]
    [MemberData(nameof(Bad))]
    public void Cell_BadText_IsRefusedInOneSentenceAndTheOldValueStays(string text)
    {
        using var terminal = new DemoTerminal();
        string[] before = [.. terminal.Open("income").Lines];
        terminal.Press(Key.Enter).Type(text).Press(Key.Enter);
        Assert.NotEmpty(terminal.Top.Message);
        Assert.DoesNotContain('\n', terminal.Top.Message);
        Assert.Contains(terminal.Top.Message.Split(' ')[0], string.Join(' ', terminal.Lines), StringComparison.Ordinal);
        Assert.EndsWith(": " + text, terminal.TypedLine, StringComparison.Ordinal);

        terminal.Press(Key.Esc, Key.CursorUp);
        Assert.Equal(before, terminal.Lines);

        // It is there to be mended, and taken out it is gone.
        terminal.Press(Key.Enter);
        Assert.EndsWith(": " + text, terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press([.. Enumerable.Repeat(Key.Backspace, text.Length)]).Press(Key.Esc, Key.Enter);
        Assert.EndsWith(": 2,287.64", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Esc);
        Assert.True(terminal.Session.Book.Draft is null || terminal.Session.Book.Draft.Incomes.IsEmpty);
    }

    // What is asked for begins at the left, the value right behind it, and what ends the typing and the day's sum stay in view.
    [Theory]
    [InlineData("income", "Odette, joinery came in: 12", 80, 24)]
    [InlineData("bills", "After-school club comes to: 12", 80, 24)]
    [InlineData("bills", "After-school club comes to: 12", 60, 20)]
    [InlineData("pots", "Fill Food with: 12", 80, 24)]
    [InlineData("surplus", "Place on Sofa card: 12", 132, 40)]
    public void Cell_Typed_StandsBehindWhatIsAskedWithTheKeysAndTheSumInView(string name, string typed, int width, int height)
    {
        using var terminal = new DemoTerminal(width, height);
        terminal.Open(name);
        string[] sum = [.. terminal.Lines.Reverse().Skip(1).TakeWhile(line => !line.Contains('\u2500', StringComparison.Ordinal))];
        terminal.Press(Key.Enter).Type("12");
        Assert.Equal(" " + typed, terminal.TypedLine);
        Assert.Equal(" Enter take  Esc leave as it was", terminal.BottomLine);
        Assert.Equal(sum, terminal.Lines.Reverse().Skip(1).Take(sum.Length));
    }

    [Fact]
    public void Cell_Refused_SaysWhyBesideWhatIsTyped()
    {
        using var terminal = new DemoTerminal(60, 20);
        terminal.Open("income").Press(Key.Enter).Type("12x").Press(Key.Enter);
        int typed = terminal.Lines.ToList().FindIndex(line => line.TrimEnd().EndsWith(": 12x", StringComparison.Ordinal));
        Assert.Contains("'12x' is not an amount", terminal.Lines[typed + 1], StringComparison.Ordinal);
        Assert.Contains(terminal.Lines, line => line.Contains("all placed", StringComparison.Ordinal));
    }

    [Fact]
    public void Cell_PastedControlCharacters_AreNotTakenIn()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Paste("\e]0;gone\a7\e[31m\t");
        Assert.DoesNotContain(terminal.TypedLine, char.IsControl);
        terminal.Press(Key.Enter);
        Assert.NotEmpty(terminal.Top.Message);
        Assert.DoesNotContain(terminal.Top.Message, char.IsControl);
    }

    [Fact]
    public void Cell_PastedLines_GiveTheFirstAlone()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Paste("12.50\n99\n");
        Assert.EndsWith(": 12.50", terminal.TypedLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_Refused_IsReplacedByWhatIsTypedNext()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("12,,5").Press(Key.Enter);
        Assert.EndsWith(": 12,,5", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Type("2300");
        Assert.EndsWith(": 2300", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Enter);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_BegunAndBackspace_LosesOneCharacter()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter, Key.Backspace);
        Assert.EndsWith(": 2,287.6", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Backspace).Type("5");
        Assert.EndsWith(": 2,287.5", terminal.TypedLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_BegunAndTypedOrDeleted_IsReplaced()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("5");
        Assert.EndsWith(": 5", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Backspace, Key.Esc, Key.Enter, Key.Delete);
        Assert.EndsWith(":", terminal.TypedLine.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_RefusedAndAnArrowOrBackspace_IsMended()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("2300xy").Press(Key.Enter, Key.End, Key.Backspace, Key.Enter, Key.Backspace, Key.Enter);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_RefusedInTwoLines_SaysItOnce()
    {
        using var terminal = new DemoTerminal(60, 20);
        terminal.Open("ledger").Type("dsoon").Press(Key.Enter);
        Assert.Single(terminal.Lines, line => line.Contains("Write a day like 2026-03-06", StringComparison.Ordinal));
    }

    [Fact]
    public void Cell_BadThenRight_TakesTheRightOne()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("x").Press(Key.Enter, Key.Backspace).Type("2000+300").Press(Key.Enter);
        Assert.Empty(terminal.Top.Message);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_ThatDoesSomething_IsLeftUndoneByEsc()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("undo").Press(Key.Enter).Type("typed wrong").Press(Key.Esc);
        Assert.DoesNotContain(terminal.Session.Book.Ledger.Movements, movement => movement.Reverses is not null);
        terminal.Press(Key.Enter).Type("typed wrong").Press(Key.Enter);
        Assert.Single(terminal.Session.Book.Ledger.Movements, movement => movement.Reverses is not null);
    }

    [Fact]
    public void Cell_TypedAmountAndEsc_IsNotTakenAndThereAgain()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("2300").Press(Key.Esc);
        Assert.DoesNotContain("2,300.00", terminal.Lines[4], StringComparison.Ordinal);
        Assert.Null(terminal.Session.Book.Draft);
        Assert.StartsWith("Nothing was changed; what you typed is there again", terminal.Top.Message, StringComparison.Ordinal);

        // Also after going home and coming back.
        terminal.Press(Key.Esc, Key.Enter, Key.Enter);
        Assert.EndsWith(": 2300", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Enter);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
        terminal.Press(Key.CursorUp, Key.Enter);
        Assert.EndsWith(": 2,300.00", terminal.TypedLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_TypedAndCtrlC_IsNotTakenAndThereAgain()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("23").Press(Key.C.WithCtrl, Key.Esc, Key.Enter);
        Assert.EndsWith(": 23", terminal.TypedLine, StringComparison.Ordinal);
        Assert.Null(terminal.Session.Book.Draft);
    }

    // Bounded work, whatever is pasted: the text never grows past the cell's room.
    [Theory]
    [InlineData(201)]
    [InlineData(5_000)]
    [InlineData(1_000_000)]
    public void Cell_PasteThatDoesNotFit_IsRefusedWhole(int length)
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("5").Paste(new string('7', length));
        Assert.EndsWith(": 5", terminal.TypedLine, StringComparison.Ordinal);
        Assert.Contains($"{length} characters", terminal.Top.Message, StringComparison.Ordinal);
        Assert.EndsWith("nothing of it was taken.", terminal.Top.Message, StringComparison.Ordinal);
        terminal.Type("6").Press(Key.Enter);
        Assert.Contains("*56.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_TypedPastItsRoom_SaysSo()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Paste(new string('1', CellEdit.Usual)).Type("2");
        Assert.Equal("There is room for 200 characters here.", terminal.Top.Message);
        terminal.Press(Key.Backspace);
        Assert.Empty(terminal.Top.Message);
        terminal.Press(Key.Enter);
        Assert.NotEmpty(terminal.Top.Message);
    }

    [Fact]
    public void Paste_OnTheListOfPurchases_IsRead()
    {
        using var terminal = new DemoTerminal();
        terminal.Press(new Key('b'), new Key('i')).Paste("2026-03-01\t8.20\tCorner \e]0;gone\ashop\r\n2026-03-02\t3.00\tBaker\r\n");
        Assert.Contains(terminal.Lines, line => line.Contains("Corner ]0;goneshop", StringComparison.Ordinal));
        Assert.Contains(terminal.Lines, line => line.Contains("Baker", StringComparison.Ordinal));
        terminal.Press(Key.Esc, new Key('?')).Paste("nothing here takes it");
        Assert.Empty(terminal.Top.Message);
    }

    [Fact]
    public void Paste_TooLongForAnyScreen_IsRefused()
    {
        using var terminal = new DemoTerminal();
        terminal.Press(new Key('b'), new Key('i')).Paste(new string('x', InputReader.MostPasted + 1));
        Assert.Equal("What was pasted is too long; nothing of it was taken.", terminal.Top.Message);
    }
}
