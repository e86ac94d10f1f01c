using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Receiving;
using Payday.Json;
using Payday.Pages;
using Payday.Printing;
using Payday.Reports;
using Payday.Slips;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday slip</c>: the paper for the bank, or the filling sheet.</summary>
internal static class SlipCommand
{
    public static Command Build(CommandShell shell)
    {
        Option<LocalDate?> on = OptionValues.Date("--on", "The payday. Default: the last closed one, else the next.");
        var filling = new Option<bool>("--filling") { Description = "The filling sheet: which notes go in which pot for which week." };
        var papers = new PaperOptions("A6 for the slip; for the filling sheet and for large print letter or A4, as is usual with the currency.");
        var command = new PaydayCommand(
            "slip",
            "Show the withdrawal slip, or the filling sheet, as text, as a PDF or on a printer.",
            "payday slip --filling --pdf filling.pdf --paper letter") { on, filling };
        papers.AddTo(command);
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            SlipWish wish = papers.Wish(parsed, parsed.GetValue(filling));
            return wish.Fault is { } fault
                ? new Answer.WrongUse(fault)
                : call.OnLook(book =>
                {
                    Result<PaydayOnPaper> found = PaydayOnPaper.Find(book, parsed.GetValue(on));
                    return found.Ok ? Make(call.Folder, book, found.Value, wish) : Answer.Because(found.Fault, book.Household.Settings.Numbers);
                });
        });
    }

    private static Answer Make(StoreFolder own, Book book, PaydayOnPaper found, SlipWish wish)
    {
        Household household = book.Household;
        ReceivedNotes received = ReceivedNotes.Of(book, found.Payday);
        string[] still = found.Closed ? [] : ["", "This payday is not closed yet: the figures may still change."];
        return new PaperAnswers(wish, own, household.Currency).Of(
            (size, fonts) => wish.Filling
                ? PrintedPaper.Filling(BankPapers.Filling(book, received), size, wish.Print, fonts, wish.Columns)
                : PrintedPaper.Slip(BankPapers.Slip(household, found.Payday), size, wish.Print, fonts, wish.Columns),
            columns => wish.Filling
                ? FillingSheetLayout.Lay(BankPapers.Filling(book, received), columns)
                : SlipLayout.Lay(BankPapers.Slip(household, found.Payday), columns),
            still,
            () => Json(household, found, received));
    }

    private static string Json(Household household, PaydayOnPaper paper, ReceivedNotes received)
    {
        ClosedPayday payday = paper.Payday;
        Dictionary<PotId, string> names = household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        Money total = Money.Sum(
            payday.Withdraw.Select(note => Money.FromMinorUnits(note.Key, household.Currency) * note.Value), household.Currency);
        return JsonSerializer.Serialize(
            new SlipResult(
                LocalDatePattern.Iso.Format(payday.Payday),
                paper.Closed,
                NoteText.Counts(payday.Withdraw, household.Currency),
                total.ToPlain(),
                [.. received.Payday.Parts.Select(part => new FillingResult(
                    names.GetValueOrDefault(part.PotId, part.PotId.Text),
                    part.Week is { } week ? LocalDatePattern.Iso.Format(week) : null,
                    NoteText.Counts(part.Notes, household.Currency)))],
                received.Payday.KeptBack.ToDictionary(kept => names.GetValueOrDefault(kept.Key, kept.Key.Text), kept => kept.Value.ToPlain()),
                received.Differ ? NoteText.Counts(received.Payday.Withdraw, household.Currency) : null,
                NoteText.Counts(received.Loose, household.Currency),
                [.. BankPapers.Slip(household, payday).Trips.Select(trip => new TripResult(LocalDatePattern.Iso.Format(trip.Date), NoteCounts.Worth(trip.Notes, household.Currency).ToPlain()))]),
            ResultJson.Readable.SlipResult);
    }
}
