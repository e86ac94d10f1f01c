using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Lists;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Shell;

namespace Payday.Screens.Forms;

/// <summary>A field that holds notes by value, counted on a screen of their own.</summary>
internal static class NotesField
{
    /// <summary>A field for notes.</summary>
    /// <param name="session">The book.</param>
    /// <param name="form">Where they are kept.</param>
    /// <param name="name">The name under which they are.</param>
    /// <param name="label">What the screen calls them.</param>
    /// <param name="help">What they are for.</param>
    public static FormField Of(BookSession session, KeptForm form, string name, string label, string help) => new(name, label, help)
    {
        Show = text => In(session, text) is { } notes ? NoteText.Listed(notes, session.Book.Household.Currency, session.Style) : text,
        Leads = () => new Way.To(new NotesScreen(
            session, label, help, In(session, form[name]) ?? Notes.None, notes => form.Keep((name, notes.IsEmpty ? null : NoteList.Write(session.Book.Household, notes))))),
    };

    /// <summary>The notes that a text stands for; null where it stands for none.</summary>
    public static Notes? In(BookSession session, string? text) => text is { Length: > 0 } && NoteList.Read(session.Book.Household, text) is { Ok: true } read ? read.Value : null;
}
