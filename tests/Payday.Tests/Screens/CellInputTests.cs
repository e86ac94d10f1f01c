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
        Assert.EndsWith(": " + text, terminal.BottomLine, StringComparison.Ordinal);

        terminal.Press(Key.Esc, Key.CursorUp);
        Assert.Equal(before, terminal.Lines);
        Assert.True(terminal.Session.Book.Draft is null || terminal.Session.Book.Draft.Incomes.IsEmpty);
    }

    [Fact]
    public void Cell_PastedControlCharacters_AreNotTakenIn()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Paste("\e]0;gone\a7\e[31m\t");
        Assert.DoesNotContain(terminal.BottomLine, char.IsControl);
        terminal.Press(Key.Enter);
        Assert.NotEmpty(terminal.Top.Message);
        Assert.DoesNotContain(terminal.Top.Message, char.IsControl);
    }

    [Fact]
    public void Cell_PastedLines_GiveTheFirstAlone()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Paste("12.50\n99\n");
        Assert.EndsWith(": 12.50", terminal.BottomLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_Refused_IsReplacedByWhatIsTypedNext()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("12,,5").Press(Key.Enter);
        Assert.EndsWith(": 12,,5", terminal.BottomLine, StringComparison.Ordinal);
        terminal.Type("2300");
        Assert.EndsWith(": 2300", terminal.BottomLine, StringComparison.Ordinal);
        terminal.Press(Key.Enter);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_BegunAndBackspace_LosesOneCharacter()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter, Key.Backspace);
        Assert.EndsWith(": 2,287.6", terminal.BottomLine, StringComparison.Ordinal);
        terminal.Press(Key.Backspace).Type("5");
        Assert.EndsWith(": 2,287.5", terminal.BottomLine, StringComparison.Ordinal);
    }

    [Fact]
    public void Cell_BegunAndTypedOrDeleted_IsReplaced()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("5");
        Assert.EndsWith(": 5", terminal.BottomLine, StringComparison.Ordinal);
        terminal.Press(Key.Esc, Key.Enter, Key.Delete);
        Assert.EndsWith(":", terminal.BottomLine.TrimEnd(), StringComparison.Ordinal);
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
    public void Cell_TypedAmountAndEsc_IsKept()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("2300").Press(Key.Esc);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }
}
