using Payday.Core.DuePayments;
using Payday.Screens.Bank;
using Payday.Screens.Dues;
using Payday.Screens.Entries;
using Payday.Screens.Moves;
using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens.Forms;

/// <summary>What is pasted into the forms between paydays: long, of many lines, with control characters.</summary>
[Collection(OneTerminal.Name)]
public class FormPasteTests
{
    private const string Nasty = "\e]0;gone\a\e[31maccount\tfee\u009b1m\u202e\nsecond line\n";

    public static TheoryData<string> Fields => ["entry what", "entry amount", "move why", "move amount", "due amount", "due day", "balance", "day of the balance"];

    [Theory]
    [MemberData(nameof(Fields))]
    public void Pasted_ControlCharactersAndLines_GiveOneCleanLine(string field)
    {
        using DemoTerminal terminal = At(field);
        terminal.Paste(Nasty);
        Assert.DoesNotContain(terminal.TypedLine, char.IsControl);
        Assert.DoesNotContain("second", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Press(Key.Enter);
        Assert.DoesNotContain(string.Concat(terminal.Lines), char.IsControl);
        Assert.DoesNotContain(terminal.Session.Book.Weeks.Forms.SelectMany(form => form.Texts.Values), text => text.Any(char.IsControl) || text.Contains('\u202e', StringComparison.Ordinal));
    }

    // Bounded work, and nothing half taken: the field says so and stands as it was.
    [Theory]
    [MemberData(nameof(Fields))]
    public void Pasted_TooLong_IsRefusedWhole(string field)
    {
        using DemoTerminal terminal = At(field);
        string before = terminal.TypedLine;
        terminal.Paste(new string('7', 5000));
        Assert.Equal(before, terminal.TypedLine);
        Assert.NotEmpty(terminal.Top.Message);
        Assert.Empty(terminal.Session.Book.Weeks.Forms);
    }

    // Where no cell is open nothing takes a paste.
    [Theory]
    [InlineData("entry")]
    [InlineData("move")]
    [InlineData("due")]
    [InlineData("balance")]
    public void Pasted_OnAFormThatIsNotTypedIn_ChangesNothing(string name)
    {
        using var terminal = new DemoTerminal(first: session => Screen(session, name));
        string[] before = [.. terminal.Lines];
        terminal.Paste(Nasty);
        Assert.Equal(before, terminal.Lines);
    }

    private static DemoTerminal At(string field)
    {
        var terminal = new DemoTerminal(first: session => Screen(session, field));
        int row = field switch { "entry what" => 4, "entry amount" => 1, "move why" => 3, "move amount" => 2, "due day" => 1, _ => 0 };
        return terminal.Press([.. Enumerable.Repeat(Key.CursorDown, row)]).Press(field == "day of the balance" ? new Key('d') : Key.Enter);
    }

    private static Screen Screen(BookSession session, string name) => name.Split(' ')[0] switch
    {
        "entry" => new EntryScreen(session),
        "move" => new MoveScreen(session),
        "due" => new DueScreen(session, DueLines.Of(session.Book, session.Today.PlusMonths(1))[0], _ => { }),
        _ => new ReconcileScreen(session),
    };
}
