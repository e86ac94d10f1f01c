using System.Collections.Immutable;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Receiving;
using Payday.Core.Undo;
using Payday.Json;
using Payday.Lists;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday fill --got</c>: what the bank really gave.</summary>
internal static class ReceivedNotesAnswer
{
    private const string AsTheSlip = "slip";

    public static Answer Enter(BookStore store, Book book, string text, LocalDate? on, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        if (on > today)
        {
            return new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(on.Value)}: {DateTexts.StillToCome}");
        }

        if (string.Equals(text.Trim(), AsTheSlip, StringComparison.OrdinalIgnoreCase))
        {
            return Undo(store, book, today);
        }

        Result<Notes> got = NotesInput.Read(text, book.Household.Currency, style);
        if (!got.Ok)
        {
            return new Answer.WrongUse("--got " + FaultTexts.Of(got.Fault, style));
        }

        Result<ReceivingPlan> plan = ReceivingPlan.Of(book, got.Value);
        if (!plan.Ok)
        {
            return Refused(book, plan.Fault);
        }

        LocalDate payday = plan.Value.Closed.Payday;
        Result<Book> after = plan.Value.Confirm(on ?? (today > payday ? today : payday));
        if (!after.Ok)
        {
            return Refused(book, after.Fault);
        }

        store.Save(book, after.Value);
        return Shown(book.Household, plan.Value);
    }

    private static Answer Undo(BookStore store, Book book, LocalDate today)
    {
        if (ReceivingUndo.Last(book) is not { } received)
        {
            return Refused(book, new ReceivingFault.NothingEntered());
        }

        return ReceivingUndo.InTheWay(book) is { } obstacle
            ? UndoOption.Refused(book, obstacle)
            : UndoOption.Stored(store, book, ReceivingUndo.Of(book, today), [("notes received", null, received.Payday)]);
    }

    private static Answer Refused(Book book, Fault fault) =>
        fault is Obstacle obstacle ? UndoOption.Refused(book, obstacle) : Answer.Because(fault, book.Household.Settings.Numbers);

    private static Answer.Done Shown(Household household, ReceivingPlan plan)
    {
        Currency currency = household.Currency;
        ImmutableArray<string> lines = ReceivedReport.Of(household, plan);
        Dictionary<string, string> ByName(IEnumerable<KeyValuePair<Core.Ids.PotId, Money>> sums) => sums.ToDictionary(sum => EndText.Pot(household, sum.Key), sum => sum.Value.ToPlain());
        return new Answer.Done(
            [.. lines.SelectMany(Report.Prose), "The filling sheet is made anew: payday slip --filling."],
            JsonSerializer.Serialize(
                new ReceivedResult(
                    LocalDatePattern.Iso.Format(plan.Closed.Payday),
                    NoteText.Counts(plan.Closed.Withdraw, currency),
                    NoteText.Counts(plan.Got, currency),
                    plan.More.ToPlain(),
                    [.. plan.Parts.Select(part => new FillingResult(
                        EndText.Pot(household, part.PotId), part.Week is { } week ? LocalDatePattern.Iso.Format(week) : null, NoteText.Counts(part.Notes, currency)))],
                    NoteText.Counts(plan.Loose, currency),
                    ByName(plan.LooseOf),
                    ByName(plan.BackInAccount),
                    plan.FromBuffer.ToPlain(),
                    [.. lines.Select(CleanText.OneLine)]),
                ResultJson.Readable.ReceivedResult)) { HasChanged = true };
    }
}
