using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Step 6: the cash pots' fills, split over the weeks and turned into notes.</summary>
internal static class WithdrawalRules
{
    public static WithdrawalStep Of(RoutineFacts facts, PotsStep pots, SurplusStep surplus)
    {
        Money loose = LooseOfPots(facts);
        if (loose.IsPositive && !facts.Draft.LeavesNotesAtHome)
        {
            // A pot can only spend its part of the loose notes if so much of them goes into pots.
            WithdrawalStep step = Of(facts, pots, surplus, withLoose: true);
            if (Money.Sum(NoteOrigins.Of(step).Select(pot => pot.Loose.Worth(loose.Currency)), loose.Currency) >= loose)
            {
                return step;
            }
        }

        return Of(facts, pots, surplus, withLoose: false);
    }

    private static Money LooseOfPots(RoutineFacts facts) =>
        Money.Sum(facts.Book.Household.Pots.Select(pot => PotMoney.InLooseNotes(facts.Book.Ledger.Balances, pot.Id)), facts.Book.Household.Currency);

    private static WithdrawalStep Of(RoutineFacts facts, PotsStep pots, SurplusStep surplus, bool withLoose)
    {
        Household household = facts.Book.Household;
        Notes onHand = PotNotes.Of(facts.Book).Loose;
        ImmutableArray<ReturnedPot> owedBack = facts.Draft.UsesOwedBack ? OwedBackOffer.Usable(facts.Book, facts.Period.First) : [];
        Notes usable = (facts.Draft.LeavesNotesAtHome ? Notes.None : onHand).Plus(OwedBackOffer.Sum(owedBack));
        ImmutableArray<(Pot Pot, Money Amount, ImmutableArray<NotePart> Parts)> wanted =
        [
            .. pots.Rows
                .Where(row => row.Pot.Place == Place.Cash)
                .Select(row => (row.Pot, Amount: AmountFor(facts, row, surplus, withLoose)))
                .Where(pot => pot.Amount.IsPositive)
                .Select(pot => (pot.Pot, pot.Amount, Parts(facts, pot.Pot, pot.Amount))),
        ];

        NotePart[] parts = [.. wanted.SelectMany(pot => pot.Parts)];
        NotePlan plan = WithdrawalNotes.Plan(facts, usable, parts, household.Pots);
        ILookup<PotId, PartNotes> byPot = plan.Parts.ToLookup(part => part.Part.Pot);
        return new WithdrawalStep([.. wanted.Select(pot => Row(facts, pot.Pot, pot.Amount, byPot[pot.Pot.Id]))], onHand, plan) { OwedBack = owedBack };
    }

    private static Money AmountFor(RoutineFacts facts, PotRow row, SurplusStep surplus, bool withLoose) =>
        surplus.Placements
            .Where(placement => placement.Target == MoveTarget.Pot(row.Pot.Id))
            .Aggregate(row.Fill, (sum, placement) => sum + placement.Amount)
        + PotRules.KeptBack(facts.Book.Ledger.Balances, row.Pot.Id)
        + (withLoose ? PotMoney.InLooseNotes(facts.Book.Ledger.Balances, row.Pot.Id) : Money.Zero(row.Fill.Currency));

    // Spending goes in the wallet, week by week or all of it on the first fill day; what is saved goes in its envelope at once.
    private static ImmutableArray<NotePart> Parts(RoutineFacts facts, Pot pot, Money amount)
    {
        // What is less than a note is kept back whole, whatever notes the pot would like.
        NoteWishes wishes = amount < PotRules.UnitOf(facts, pot) ? NoteWishes.None : pot.Notes;
        ImmutableArray<LocalDate> weeks = facts.Period.FillDays(facts.Book.Household.Settings.FillDay);
        if (pot.Kind is not PotKind.Spending spending || weeks.IsEmpty)
        {
            return [new NotePart(pot.Id, pot.Name, null, amount, wishes)];
        }

        if (!spending.GoesWeekByWeek)
        {
            return [new NotePart(pot.Id, pot.Name, weeks[0], amount, wishes)];
        }

        WeekShares split = spending.Per == FillPer.Week
            ? WeekSplit.Split(amount, [.. weeks.Select(spending.AmountOn)], PotRules.UnitOf(facts, pot))
            : WeekSplit.Split(amount, weeks.Length, PotRules.UnitOf(facts, pot));
        return [.. weeks.Zip(split.Shares).Select(week => new NotePart(pot.Id, pot.Name, week.First, week.Second, wishes))];
    }

    private static CashPotRow Row(RoutineFacts facts, Pot pot, Money amount, IEnumerable<PartNotes> parts)
    {
        ImmutableArray<WeekPart> weeks =
        [
            .. parts.Select(part => new WeekPart(
                part.Part.Week, part.Notes, part.Paid, part.Amount, facts.Draft.Notes.ContainsKey(new PartKey(pot.Id, part.Part.Week)))),
        ];
        Money inNotes = Money.Sum(weeks.Select(week => week.Amount), amount.Currency);
        return new CashPotRow(pot, amount, weeks, amount - inNotes);
    }
}
