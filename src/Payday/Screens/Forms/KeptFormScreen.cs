using System.Collections.Immutable;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Forms;

/// <summary>A form, a row a field, under it what it would do; what is typed is kept in the book until it is done (<see cref="KeptForm"/>).</summary>
/// <remarks>
/// A screen of it says which fields there are and what Right does with them; the texts themselves it asks for by
/// <see cref="Text"/>, so that it holds none of its own and stands as it was left whenever it is opened again.
/// </remarks>
internal abstract class KeptFormScreen : CursorScreen
{
    private readonly BookSession session;
    private readonly string does;
    private readonly string means;
    private ImmutableArray<Ink> inks = [];

    /// <param name="session">The book.</param>
    /// <param name="name">The name of the form: a word of its own, the same in every version.</param>
    /// <param name="does">What Right does, in a word or two.</param>
    /// <param name="means">The same in a sentence.</param>
    protected KeptFormScreen(BookSession session, string name, string does, string means)
    {
        this.session = session;
        this.does = does;
        this.means = means;
        Form = new KeptForm(session, name);
    }

    /// <summary>What was typed.</summary>
    protected KeptForm Form { get; }

    /// <summary>The book.</summary>
    protected BookSession Session => session;

    /// <summary>The fields that there are now, going by what stands in them.</summary>
    protected abstract ImmutableArray<FormField> Fields { get; }

    /// <inheritdoc/>
    protected sealed override int Count => Fields.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Here.Picks.IsEmpty || Here.Leads is not null
            ? new(Key.Enter, "Enter", "change", "Change this field; a letter or digit starts too.", () => Here.Leads?.Invoke() ?? new Way.Edit(Edit()))
            : new(Key.Enter, "Enter", "pick", "Pick one of the list. A letter goes to the next one that begins with it.", () => new Way.To(Picks())),
        .. Form.IsBegun ? [new Binding(Key.Delete, "Del", "", "Forget what was typed here, and begin an empty form.", Restart)] : Array.Empty<Binding>(),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        new(Key.CursorRight, "Right", does, means, Finish),
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; what was typed stays here, also where the terminal goes.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => Here.Help;

    /// <summary>What the form as it stands would do, a paragraph each, or why it can't; shown under the fields.</summary>
    protected abstract IEnumerable<Said> Effect { get; }

    /// <summary>What stands in a field, or what usually does; empty for nothing. It asks for <see cref="Fields"/>, which so ask <see cref="Form"/> alone.</summary>
    protected string Text(string field) => Form[field] is { } typed ? typed : Fields.FirstOrDefault(one => one.Name == field)?.Usual ?? "";

    /// <summary>Does what the form is for.</summary>
    protected abstract Way Finish();

    /// <summary>Moves the cursor to a field, and says something.</summary>
    protected Way At(string field, string message)
    {
        Cursor = Math.Max(0, Fields.ToList().FindIndex(one => one.Name == field));
        Message = message;
        return Way.Stay;
    }

    /// <summary>Says something and stays.</summary>
    protected Way Stay(string message)
    {
        Message = message;
        return Way.Stay;
    }

    /// <summary>The fields that there are now, to be asked for one after the other.</summary>
    public ImmutableArray<FormField> Asked => Fields;

    /// <summary>What was typed, where the form is asked for field by field.</summary>
    public KeptForm Kept => Form;

    /// <summary>What it would do as it stands, or why it can't.</summary>
    public IEnumerable<string> WouldDo => Effect.Select(said => said.Text);

    /// <summary>Does what the form is for.</summary>
    /// <returns>What is wrong or missing, one sentence; or null when it is stored.</returns>
    public string? TryFinish()
    {
        Message = "";
        return Finish() is Way.Stays ? Message : null;
    }

    private FormField Here => Fields[Math.Clamp(Cursor, 0, Count - 1)];

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        FormField field = Here;
        if (field.Leads is not null)
        {
            return null;
        }
        if (field.Picks.IsEmpty)
        {
            return Edit() with { Text = text };
        }
        int now = field.Picks.ToList().FindIndex(pick => pick.Value == Shown(field));
        int next = NextName.From([.. field.Picks.Select(pick => pick.Name)], now, text);
        if (next >= 0 && next != now)
        {
            Form.Keep((field.Name, field.Picks[next].Value));
        }
        return null;
    }

    /// <inheritdoc/>
    protected sealed override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        IReadOnlyList<string> rows = new TextTable(
            [new(""), new("") { Shrinks = true, MinWidth = 10 }],
            [.. Fields.Select(field => ImmutableArray.Create(field.Label, Value(field)))],
            decimalMark: "").Lay(width).Rows;
        (string Text, Ink Ink)[] effect = [.. Effect.SelectMany(said => TextWrap.Lines(CleanText.OneLine(said.Text), width).Select(line => (line, said.Ink)))];
        inks = [.. effect.Select(line => line.Ink)];
        return ([], effect.Length == 0 ? rows : [.. rows, "", .. effect.Select(line => line.Text)]);
    }

    /// <inheritdoc/>
    protected sealed override (char Sign, Ink Ink) Mark(int row) => (' ', row - Count - 1 is var line && line >= 0 && line < inks.Length ? inks[line] : Ink.Plain);

    private string Shown(FormField field) => Form[field.Name] ?? field.Usual;

    private string Value(FormField field)
    {
        string text = Shown(field);
        string said = field.Picks.IsEmpty ? text.Length == 0 ? "" : field.Show(text) : field.Picks.FirstOrDefault(pick => pick.Value == text)?.Name ?? "";
        return said.Length == 0 ? "-" : CleanText.OneLine(said);
    }

    // An emptied field is as if nothing had been typed there.
    private CellEdit Edit()
    {
        FormField field = Here;
        return new CellEdit(field.Label, Shown(field), text =>
        {
            string clean = CleanText.OneLine(text).Trim();
            if (clean.Length > 0 && field.Fault(clean) is { } fault)
            {
                return fault;
            }
            Form.Keep((field.Name, clean.Length == 0 ? null : field.Keep(clean)));
            Cursor = Math.Min(Fields.ToList().FindIndex(one => one.Name == field.Name) + 1, Count - 1);
            return null;
        }) { Most = field.Most };
    }

    private PickScreen<string> Picks()
    {
        FormField field = Here;
        return new PickScreen<string>(field.Label, field.Picks, Shown(field), picked =>
        {
            Form.Keep((field.Name, picked));
            Cursor = Math.Min(Cursor + 1, Count - 1);
            return Way.Back;
        });
    }

    private Way Restart()
    {
        Form.Forget();
        Cursor = 0;
        return Way.Stay;
    }
}
