using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Lists;

namespace Payday.Screens.Shell;

/// <summary>What was decided of a cash return, kept in the book as a form is, so that it outlives the program.</summary>
internal static class KeptReturn
{
    private const string Form = "cash return";
    private const string Leaves = "leaves ";
    private const string Picked = "picked ";

    /// <summary>What was decided; all as planned where nothing was.</summary>
    public static ReturnDraft Of(Book book)
    {
        ReturnDraft draft = ReturnDraft.AsPlanned;
        foreach ((string field, string text) in book.Weeks.FormOf(Form)?.Texts ?? ImmutableSortedDictionary<string, string>.Empty)
        {
            if (field.StartsWith(Leaves, StringComparison.Ordinal))
            {
                draft = draft with { Leaves = draft.Leaves.Add(new PotId(field[Leaves.Length..])) };
            }
            else if (field.StartsWith(Picked, StringComparison.Ordinal) && NoteList.Read(book.Household, text) is { Ok: true, Value: Notes notes })
            {
                draft = draft with { Picked = draft.Picked.SetItem(new PotId(field[Picked.Length..]), notes) };
            }
        }

        return draft;
    }

    /// <summary>The book that keeps it.</summary>
    public static Book In(Book book, ReturnDraft draft) => book with
    {
        Weeks = book.Weeks.With(new FormDraft(
            Form,
            draft.Leaves.Select(pot => KeyValuePair.Create(Leaves + pot.Text, "yes"))
                .Concat(draft.Picked.Select(pot => KeyValuePair.Create(Picked + pot.Key.Text, NoteList.Write(book.Household, pot.Value))))
                .ToImmutableSortedDictionary(StringComparer.Ordinal))),
    };
}
