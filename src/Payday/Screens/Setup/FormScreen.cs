using System.Collections.Immutable;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>An item as a form: a row a field.</summary>
/// <param name="work">The household.</param>
/// <param name="form">The values.</param>
/// <param name="noun">What the item is, e.g. <c>bill</c>.</param>
/// <param name="guide">Where Right leads, or null.</param>
internal sealed class FormScreen(SetupWork work, IItemForm form, string noun, ISetupGuide? guide = null) : CursorScreen
{
    private bool asked;
    private bool isChanged;

    /// <summary>The same with its cursor on the first field that is still to fill in.</summary>
    public FormScreen AtMissing()
    {
        Cursor = Math.Max(0, form.Rows.ToList().FindIndex(row => row.IsMissing));
        return this;
    }

    /// <inheritdoc/>
    public override string Title => form.Rows[0] is { Label: "Name", Shown: { Length: > 0 } name }
        ? $"{char.ToUpperInvariant(noun[0])}{noun[1..]}: {name}"
        : $"{char.ToUpperInvariant(noun[0])}{noun[1..]}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
        [.. form.Rows.Select(row => (row.Label, Meaning(row)))];

    /// <inheritdoc/>
    protected override string Aside => guide?.Here ?? "";

    /// <inheritdoc/>
    protected override int Count => form.Rows.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Row.Choices.IsEmpty
            ? new(Key.Enter, "Enter", "change", "Type this field; it is checked as it is left. A letter or digit starts too.", Change)
            : new(Key.Enter, "Enter", "next choice", "The next of the choices. A letter goes to the next one that begins with it.", Cycle),
        .. Row.Choices.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.Space, "Space", "", "The next of the choices.", Cycle)],
        .. form.IsBegun ? [new Binding(Key.Delete, "Del", "", $"Forget what was begun here, and begin an empty {noun}.", Restart)] : Array.Empty<Binding>(),
        .. GuideKeys.Of(guide).Select(key => key with { Do = () => Leave(key.Do) }),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
        [ShellKeys.Help(this), ShellKeys.Back with { Do = () => Leave(() => Way.Back) }];

    /// <inheritdoc/>
    protected override string Detail => Meaning(Row);

    /// <inheritdoc/>
    protected override string Status => Missing is { Length: > 0 } missing
        ? $"{(form.IsStored || work.TakesParts ? "Still to fill in" : "Not stored before this is filled in")}: {missing}"
        : !form.IsStored ? "" : isChanged ? "Stored." : "Each change is stored as it is made.";

    private int At => Math.Clamp(Cursor, 0, Count - 1);

    private FormRow Row => form.Rows[At];

    private string Missing => string.Join(", ", form.Rows.Where(row => row.IsMissing).Select(row => row.Label));

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        asked = false;
        FormRow row = Row;
        if (row.Choices.IsEmpty)
        {
            return row.Locked is null ? Edit() with { Text = text } : Refused();
        }

        int next = NextName.From([.. row.Choices], row.Chosen, text);
        if (next >= 0 && next != row.Chosen)
        {
            Choose(next);
        }

        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new(""), Report.Names("") with { Grows = true }],
            [.. form.Rows.Select(row => ImmutableArray.Create(row.Label, CleanText.OneLine(Shown(row))))],
            [],
            decimalMark: "").Lay(width);
        return ([], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) =>
        form.Rows[row].IsMissing ? ('!', Ink.Alert) : form.Rows[row].Locked is null ? (' ', Ink.Plain) : (' ', Ink.Quiet);

    private static string Shown(FormRow row) => row.Shown.Length > 0 ? row.Shown : row.IsMissing ? "to fill in" : "-";

    private CellEdit Edit()
    {
        int at = At;
        FormRow row = form.Rows[at];
        return new CellEdit(row.Label, row.Typed, text =>
        {
            string? fault = form.Type(at, text);
            if (fault is null)
            {
                Message = work.Notice;
                isChanged = true;
                GoOn(row.Label);
            }

            return fault;
        }) { Most = row.MostTyped };
    }

    private Way Change()
    {
        asked = false;
        return Row.Locked is { } why ? Stay(why) : new Way.Edit(Edit());
    }

    private Way Cycle()
    {
        asked = false;
        Choose((Row.Chosen + 1) % Row.Choices.Length);
        return Way.Stay;
    }

    private void Choose(int choice)
    {
        string? refused = Row.Locked ?? form.Choose(At, choice);
        isChanged |= refused is null;
        Message = refused ?? work.Notice;
    }

    // In their order, also to one that has its usual choice already: it is to be seen before the form is whole.
    private void GoOn(string from) => Cursor = Math.Min(form.Rows.ToList().FindIndex(row => row.Label == from) + 1, Count - 1);

    private Way Restart()
    {
        form.Restart();
        Cursor = 0;
        return Way.Stay;
    }

    private static string Meaning(FormRow row) => row.Choices.IsEmpty
        ? row.Help
        : $"{row.Help} Choices, by letter too: {string.Join(" / ", row.Choices)}.";

    private Way Leave(Func<Way> leave)
    {
        if (form.IsStored || asked)
        {
            return leave();
        }

        asked = true;
        return Stay(form.IsNew
            ? $"Not stored, still to fill in: {Missing}. The same key again leaves it{(form.IsBegun ? ", and a goes on with it another time" : "")}."
            : $"Not stored, still to fill in: {Missing}. The same key again leaves the {noun} as it was.");
    }

    private CellEdit? Refused()
    {
        Message = Row.Locked!;
        return null;
    }

    private Way Stay(string message)
    {
        Message = message;
        return Way.Stay;
    }
}
