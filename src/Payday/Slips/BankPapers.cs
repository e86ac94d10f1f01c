using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Receiving;
using Payday.Reports;

namespace Payday.Slips;

/// <summary>The papers of a payday: the slip for the bank and the filling sheet for home.</summary>
internal static class BankPapers
{
    /// <summary>The slip.</summary>
    public static SlipData Slip(Household household, ClosedPayday payday)
    {
        var machine = payday.Draft.BankFor(household.Settings.Bank) as CashSource.Machine;
        return new(
            payday.Payday,
            household.Currency,
            household.Settings.Numbers,
            household.Settings.SlipLines,
            Lines(payday.Withdraw, household.Currency))
        {
            AtAMachine = machine is not null,
            Limit = machine?.Limit,
            Trips = machine is null
                ? []
                : [.. MachineTrips.Of(payday.Withdraw, machine.Limit).Select((notes, i) => new SlipTrip(payday.Payday.PlusDays(i), Lines(notes, household.Currency)))],
            NoSmallMoney = machine is null ? [] : [.. SmallMoneyMissing.Of(household, payday).Select(pot => pot.Name)],
        };
    }

    /// <summary>The slip for a cash return.</summary>
    public static SlipData Deposit(Household household, LocalDate date, Notes notes) => new(
        date,
        household.Currency,
        household.Settings.Numbers,
        household.Settings.SlipLines,
        Lines(notes, household.Currency)) { Kind = SlipKind.Deposit };

    private static FillingSheetData Filling(Household household, ClosedPayday payday)
    {
        Dictionary<PotId, string> names = household.Pots.ToDictionary(pot => pot.Id, pot => pot.Name);
        return new FillingSheetData(
            payday.Payday,
            household.Currency,
            household.Settings.Numbers,
            [],
            [.. payday.Parts.Select(part => new FillingRow(names.GetValueOrDefault(part.PotId, part.PotId.Text), part.Week, Lines(part.Notes, household.Currency)))],
            Lines(payday.Withdraw, household.Currency),
            Lines(payday.Reused, household.Currency),
            [],
            [.. payday.KeptBack.Select(kept => new KeptBackLine(names.GetValueOrDefault(kept.Key, kept.Key.Text), kept.Value))]);
    }

    /// <summary>The filling sheet of a closed payday: anew where the bank gave other notes than its slip asked for.</summary>
    public static FillingSheetData Filling(Book book, ReceivedNotes received) => Filling(book.Household, received) with
    {
        ToPay = [.. ExtraPayment.Of(book, received.Payday).Select(extra => new KeptBackLine(EndText.Debt(book.Household, extra.DebtId), extra.Amount))],
    };

    private static FillingSheetData Filling(Household household, ReceivedNotes received) => Filling(household, received.Payday) with
    {
        Loose = Lines(received.Loose, household.Currency),
        LooseOf = received.Loose.IsEmpty ? "" : ReceivedReport.Loose(household, received.Loose, received.LooseOf),
        AsReceived = received.Differ,
    };

    private static ImmutableArray<NoteLine> Lines(Notes notes, Currency currency) =>
        [.. notes.Reverse().Select(note => new NoteLine(Money.FromMinorUnits(note.Key, currency), note.Value))];
}
