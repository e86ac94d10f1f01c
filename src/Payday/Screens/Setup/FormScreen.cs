using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>An item as a form: a row a field.</summary>
/// <param name="work">The household.</param>
/// <param name="form">The values.</param>
/// <param name="noun">What the item is, e.g. <c>bill</c>.</param>
/// <param name="guide">Where Right leads, or null.</param>
internal sealed class FormScreen(SetupWork work, ItemForm form, string noun, ISetupGuide? guide = null) : CursorScreen
{
    private bool asked;

    /// <inheritdoc/>
    public override string Title => form.Fields[0] is { Label: "Name" } name && form[name] is { } value
        ? $"{char.ToUpperInvariant(noun[0])}{noun[1..]}: {value}"
        : $"{char.ToUpperInvariant(noun[0])}{noun[1..]}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
        [.. form.Fields.Select(one => (one.Label, Meaning(one, form.Choices(one))))];

    /// <inheritdoc/>
    protected override string Aside => guide?.Here ?? "";

    /// <inheritdoc/>
    protected override int Count => form.Fields.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Choices.IsEmpty
            ? new(Key.Enter, "Enter", "change", "Type this field; it is checked as it is left. A letter or digit starts too.", Change)
            : new(Key.Enter, "Enter", "next choice", "The next of the choices. A letter goes to the next one that begins with it.", Cycle),
        .. Choices.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.Space, "Space", "", "The next of the choices.", Cycle)],
        .. form.IsBegun ? [new Binding(Key.Delete, "Del", "", $"Forget what was begun here, and begin an empty {noun}.", Restart)] : Array.Empty<Binding>(),
        .. GuideKeys.Of(guide).Select(key => key with { Do = () => Leave(key.Do) }),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
        [ShellKeys.Help(this), ShellKeys.Back with { Do = () => Leave(() => Way.Back) }];

    /// <inheritdoc/>
    protected override string Detail => Meaning(Field, Choices);

    /// <inheritdoc/>
    protected override string Status => form.Missing is { IsEmpty: false } missing
        ? $"{(form.IsStored || work.TakesParts ? "Still to fill in" : "Not stored before this is filled in")}: {string.Join(", ", missing.Select(needed => needed.Label))}"
        : form.IsStored ? "Stored." : "";

    private SetupField Field => form.Fields[Math.Clamp(Cursor, 0, form.Fields.Length - 1)];

    private ImmutableArray<Choice> Choices => form.Choices(Field);

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        asked = false;
        if (Choices.IsEmpty)
        {
            return form.Locked(Field) is null ? Edit() with { Text = text } : Refused();
        }

        ImmutableArray<Choice> choices = Choices;
        int next = NextName.From([.. choices.Select(choice => choice.Label)], Now(choices), text);
        if (next >= 0 && next != Now(choices))
        {
            Choose(choices[next]);
        }

        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new(""), Report.Names("") with { Grows = true }],
            [.. form.Fields.Select(field => ImmutableArray.Create(field.Label, CleanText.OneLine(Shown(field))))],
            [],
            decimalMark: "").Lay(width);
        return ([], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) =>
        form.Missing.Contains(form.Fields[row]) ? ('!', Ink.Hand) : form.Locked(form.Fields[row]) is null ? (' ', Ink.Plain) : (' ', Ink.Quiet);

    private string Shown(SetupField field)
    {
        JsonNode? value = form[field];
        return value is not null ? field.Type.Show(value, work)
            : field.Type.Choices(work).FirstOrDefault(choice => choice.Value is null) is { } none ? none.Label
            : form.Missing.Contains(field) ? "to fill in" : "-";
    }

    private CellEdit Edit()
    {
        SetupField field = Field;
        return new CellEdit(field.Label, form[field] is { } value ? field.Type.Typed(value, work) : "", text =>
        {
            string? fault = form.Type(field, text);
            if (fault is null)
            {
                Message = work.Notice;
                GoOn(field);
            }

            return fault;
        });
    }

    private Way Change()
    {
        asked = false;
        return form.Locked(Field) is null ? new Way.Edit(Edit()) : Stay(form.Locked(Field)!);
    }

    private Way Cycle()
    {
        asked = false;
        ImmutableArray<Choice> choices = Choices;
        Choose(choices[(Now(choices) + 1) % choices.Length]);
        return Way.Stay;
    }

    private int Now(ImmutableArray<Choice> choices) => choices.ToList().FindIndex(choice => JsonNode.DeepEquals(choice.Value, form[Field]));

    private void Choose(Choice choice) =>
        Message = form.Locked(Field) ?? form.Change(Field, choice.Value?.DeepClone()) ?? work.Notice;

    // In their order, also to one that has its usual choice already: it is to be seen before the form is whole.
    private void GoOn(SetupField from) => Cursor = Math.Min(form.Fields.IndexOf(from) + 1, form.Fields.Length - 1);

    private Way Restart()
    {
        form.Restart();
        Cursor = 0;
        return Way.Stay;
    }

    private static string Meaning(SetupField field, ImmutableArray<Choice> choices) => choices.IsEmpty
        ? field.Help
        : $"{field.Help} Choices, by letter too: {string.Join(" / ", choices.Select(choice => choice.Label))}.";

    private Way Leave(Func<Way> leave)
    {
        if (form.IsStored || asked)
        {
            return leave();
        }

        asked = true;
        string names = string.Join(", ", form.Missing.Select(field => field.Label));
        return Stay(form.Index is null
            ? $"Not stored, still to fill in: {names}. The same key again leaves it{(form.IsBegun ? ", and a goes on with it another time" : "")}."
            : $"Not stored, still to fill in: {names}. The same key again leaves the {noun} as it was.");
    }

    private CellEdit? Refused()
    {
        Message = form.Locked(Field)!;
        return null;
    }

    private Way Stay(string message)
    {
        Message = message;
        return Way.Stay;
    }
}
