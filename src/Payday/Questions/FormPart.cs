using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Faults;
using Payday.Lists;
using Payday.Screens.Asking;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>A form field by field, then what it would do; what is typed is kept where its screen keeps it.</summary>
/// <param name="session">The book.</param>
/// <param name="name">By what the part is found again.</param>
/// <param name="form">The form's screen.</param>
/// <param name="done">What is said once it is stored.</param>
internal sealed class FormPart(BookSession session, string name, KeptFormScreen form, Func<string> done) : Part
{
    private const string None = "none";
    private const int FewPicks = 4;
    private readonly string title = form.Title;

    /// <inheritdoc/>
    public override string Name => name;

    /// <inheritdoc/>
    public override string Empty => "There is nothing to enter.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions =>
        [.. ((Question[])[.. form.Asked.Select(Of), Finish()]).Select(question => question with { Under = name, Heading = () => [$"{title}."], Words = form.Words })];

    private Question Of(FormField field) => new($"field {field.Name}", Text(field), answer => Take(field, answer))
    {
        Help =
        [
            field.Help,
            .. field.Picks.IsEmpty ? Array.Empty<string>() : [Picks(field).Names],
            .. field.Leads is null ? Array.Empty<string>() : [$"Type how many of each, like {session.Style.Written("20")}=2,{session.Style.Written("10")}=1."],
            "none empties it.",
        ],
    };

    private string Text(FormField field)
    {
        string kept = form.Kept[field.Name] ?? field.Usual;
        string shown = CleanText.OneLine(kept.Length == 0 ? ""
            : field.Picks.IsEmpty ? field.Show(kept)
            : field.Picks.FirstOrDefault(pick => pick.Value == kept)?.Name ?? "");
        string stands = shown.Length == 0 ? "nothing yet" : form.Kept[field.Name] is null ? $"{shown} proposed" : $"{shown} as you said";
        string asks = field.Picks.IsEmpty ? "What is it?"
            : field.Picks.Length <= FewPicks ? $"{field.Picks.Select(pick => CleanText.OneLine(pick.Name)).Humanize("or")}?"
            : "Which?";
        return $"{field.Label}: {stands}. {asks}";
    }

    private Taken Take(FormField field, string answer)
    {
        if (answer.Length == 0)
        {
            return Taken.On;
        }

        string clean = CleanText.OneLine(answer).Trim();
        if (string.Equals(clean, None, StringComparison.OrdinalIgnoreCase))
        {
            form.Kept.Keep((field.Name, null));
            return Taken.On;
        }

        string kept = clean;
        string? fault = field.Picks.IsEmpty
            ? field.Leads is null ? TooLong(field, clean) ?? field.Fault(clean) : NotesFault(clean)
            : field.Picks.FirstOrDefault(pick => string.Equals(pick.Value, clean, StringComparison.OrdinalIgnoreCase)) is { } word ? Kept(word.Value, out kept)
            : Picks(field).Find(clean, out kept);
        if (fault is not null)
        {
            return new Taken.Refused(fault);
        }

        form.Kept.Keep((field.Name, field.Picks.IsEmpty && field.Leads is null ? field.Keep(clean) : kept));
        return Taken.On;
    }

    // The word that is kept for it is taken too, such as "out".
    private static string? Kept(string value, out string kept)
    {
        kept = value;
        return null;
    }

    private static string? TooLong(FormField field, string text) => text.Length > field.Most ? $"There is room for {field.Most} characters here." : null;

    private string? NotesFault(string text) => NoteList.Read(session.Book.Household, text) is { Ok: false } read ? FaultTexts.Of(read.Fault, session.Style) : null;

    private static NamedChoice<string> Picks(FormField field) => new([.. field.Picks.Select(pick => (CleanText.OneLine(pick.Name), pick.Value))]);

    private Question Finish()
    {
        ImmutableArray<string> effect = [.. form.WouldDo];
        return new Question("finish", $"{string.Join(' ', effect)} Write it to the ledger? {YesOrNo.Proposed(true)}.".TrimStart(), answer => YesOrNo.Read(answer, true) switch
        {
            null => new Taken.Refused(YesOrNo.Neither),
            false => new Taken.Done("Nothing was written; what was typed is here again the next time."),
            _ => form.TryFinish() is { } fault ? new Taken.Refused(fault) : new Taken.Done(done()),
        })
        {
            Help = ["yes writes it to the ledger; no leaves it, and what was typed is here again the next time."],
        };
    }
}
