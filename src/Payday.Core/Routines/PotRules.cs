using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Step 4: what each pot asks for, and what it is proposed once that doesn't fit.</summary>
internal static class PotRules
{
    /// <param name="facts">The day's facts.</param>
    /// <param name="available">
    /// What is there for pots, below zero where bills and minimums already take more than there is; null where it doesn't matter.
    /// </param>
    public static PotsStep Of(RoutineFacts facts, Money? available)
    {
        Currency currency = facts.Book.Household.Currency;
        ImmutableArray<(PotRow Row, Money Unit)> wanted = [.. facts.Book.Household.Pots.Select(pot => (Wanted(facts, pot), UnitOf(facts, pot)))];
        Money missing = available is { } most ? (Money.Sum(wanted.Select(pot => pot.Row.Fill), currency) - most).ClampToZero() : Money.Zero(currency);

        // What the person decided stays as decided; only proposals are cut.
        Shortfall shortfall = Shortfall.Propose(
            [.. wanted.Where(pot => !pot.Row.Changed && pot.Row.Fill.IsPositive).Select(pot =>
                new CuttableFill(pot.Row.Pot.Id, pot.Row.Pot.Rank, pot.Row.Fill, Money.Min(pot.Row.Pot.Floor, pot.Row.Fill), pot.Unit))],
            missing);
        Dictionary<string, Money> cuts = shortfall.Cuts.ToDictionary(cut => cut.PotId, cut => cut.Cut);
        ImmutableArray<PotRow> rows = [.. wanted.Select(pot => Less(pot.Row, cuts.GetValueOrDefault(pot.Row.Pot.Id, Money.Zero(currency)), facts))];
        return new PotsStep(
            rows,
            Money.Sum(rows.Select(row => row.Fill), currency),
            Money.Sum(cuts.Values, currency));
    }

    /// <summary>What the account keeps for a pot's next fill.</summary>
    public static Money KeptBack(Balances balances, string potId) => balances[LedgerEnd.InAccount(Job.KeptBack(potId))];

    /// <summary>What one step of a pot's amounts is: a note for a cash pot, a minor unit in the account.</summary>
    public static Money UnitOf(RoutineFacts facts, Pot pot) => PotUnit.Of(pot, facts.Book.Household.Settings.Cash);

    private static PotRow Wanted(RoutineFacts facts, Pot pot)
    {
        Balances balances = facts.Book.Ledger.Balances;
        Household household = facts.Book.Household;
        Money has = PotMoney.HasNow(balances, pot.Id);
        FillProposal proposal = PotFills.Propose(pot, new PotFacts(
            has,
            has + balances[new LedgerEnd.Outside(OutsideKind.Spending, pot.Id)] + balances[new LedgerEnd.Outside(OutsideKind.Difference, pot.Id)],
            facts.Period.FillDays(household.Settings.FillDay).Length,
            facts.Payday.Date,
            facts.Months,
            PaydaysLeft(facts, pot),
            UnitOf(facts, pot),
            household.Settings.Numbers));
        bool changed = facts.Draft.Fills.TryGetValue(pot.Id, out Money decided);
        return new PotRow(pot, has, proposal.Amount, proposal.Amount, changed ? decided : proposal.Amount, changed, proposal.Why);
    }

    private static ImmutableArray<LocalDate> PaydaysLeft(RoutineFacts facts, Pot pot) => pot.Job is PotJob.Sinking sinking
        ? [.. PayCalendar.Paydays(facts.Book.Household.Sources, facts.Holidays, facts.Payday.Date, sinking.By.PlusDays(-1)).Select(payday => payday.Date)]
        : [];

    private static PotRow Less(PotRow row, Money cut, RoutineFacts facts) => cut.IsZero
        ? row
        : row with
        {
            Proposed = row.Wanted - cut,
            Fill = row.Wanted - cut,
            Why = $"{cut.ToString(facts.Book.Household.Settings.Numbers)} less; {row.Why}",
        };
}
