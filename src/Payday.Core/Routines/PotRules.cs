using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Step 4: what each pot asks for, and what it is proposed once that doesn't fit.</summary>
internal static class PotRules
{
    /// <summary>What the pots ask for, with nothing cut.</summary>
    public static PotsStep Wanted(RoutineFacts facts)
    {
        Currency currency = facts.Book.Household.Currency;
        var months = new MonthFillRules(facts.Book);
        ImmutableArray<PotRow> rows = [.. facts.Book.Household.Pots.Select(pot => Wanted(facts, months, pot))];
        return new PotsStep(rows, Money.Sum(rows.Select(row => row.Fill), currency), Money.Zero(currency));
    }

    /// <summary>What the pots get, with their proposals cut as far as that is needed and their floors allow it.</summary>
    /// <param name="facts">The day's facts.</param>
    /// <param name="wanted">What they ask for.</param>
    /// <remarks>
    /// Cuts are of whole notes; of the last one, what isn't needed stays with its pot, so that nothing is left to place while pots lack money. Common
    /// practice, no source.
    /// </remarks>
    /// <param name="available">What is there for pots; below zero where bills and minimums already take more than there is.</param>
    public static PotsStep Cut(RoutineFacts facts, PotsStep wanted, Money available)
    {
        // What the person decided stays as decided; only proposals are cut.
        Money nothing = Money.Zero(available.Currency);
        Shortfall shortfall = Shortfall.Propose(
            [.. wanted.Rows.Where(row => !row.Changed && row.Fill.IsPositive).Select(row =>
                new CuttableFill(row.Pot.Id, row.Pot.Rank, row.Fill, Money.Min(row.Pot.Floor, row.Fill), UnitOf(facts, row.Pot)))],
            (wanted.Total - available).ClampToZero());
        Dictionary<PotId, Money> cuts = shortfall.Cuts.ToDictionary(cut => cut.PotId, cut => cut.Cut);
        if (shortfall.Overshoot.IsPositive)
        {
            // What a whole note gives beyond the need is no surplus: it stays with the pot that gave it, in the account, and joins its next fill.
            cuts[shortfall.Cuts[^1].PotId] -= shortfall.Overshoot;
        }

        ImmutableArray<PotRow> rows = [.. wanted.Rows.Select(row => Less(row, cuts.GetValueOrDefault(row.Pot.Id, nothing), facts))];
        return new PotsStep(rows, Money.Sum(rows.Select(row => row.Fill), nothing.Currency), Money.Sum(cuts.Values, nothing.Currency));
    }

    /// <summary>What the account keeps for a pot's next fill.</summary>
    public static Money KeptBack(Balances balances, PotId potId) => balances[LedgerEnd.InAccount(Purpose.KeptBack(potId))];

    /// <summary>What one step of a pot's amounts is: a note for a cash pot, a minor unit in the account.</summary>
    public static Money UnitOf(RoutineFacts facts, Pot pot) => PotUnit.Of(pot, facts.Book.Household.Settings.Cash);

    private static PotRow Wanted(RoutineFacts facts, MonthFillRules months, Pot pot)
    {
        Balances balances = facts.Book.Ledger.Balances;
        Household household = facts.Book.Household;
        Money has = PotMoney.HasNow(balances, pot.Id);
        SinkingState? sinking = pot.Kind is PotKind.Sinking purpose
            ? PotRecord.Sinking(facts.Book, pot.Id, purpose, facts.Holidays, facts.Payday.Date)
            : null;
        FillProposal proposal = PotFills.Propose(pot, new PotFacts(
            has,
            has + balances[LedgerEnd.SpentFrom(pot.Id)] + balances[LedgerEnd.MissedIn(pot.Id)],
            facts.Period.FillDays(household.Settings.FillDay),
            facts.Payday.Date,
            months.Of(pot, facts.Months, facts.Payday.Date),
            household.Start,
            sinking,
            PaydaysLeft(facts, sinking),
            UnitOf(facts, pot),
            household.Settings.Numbers));
        bool changed = facts.Draft.Fills.TryGetValue(pot.Id, out Money decided);
        return new PotRow(pot, has, proposal.Amount, proposal.Amount, changed ? decided : proposal.Amount, changed, proposal.Why) { Sinking = sinking };
    }

    private static int PaydaysLeft(RoutineFacts facts, SinkingState? sinking) => sinking is { Stage: SinkingStage.Saving }
        ? facts.Book.Household.Paydays.Between(facts.Payday.Date, sinking.By.PlusDays(-1)).Length
        : 0;

    private static PotRow Less(PotRow row, Money cut, RoutineFacts facts) => cut.IsZero
        ? row
        : row with
        {
            Proposed = row.Wanted - cut,
            Fill = row.Wanted - cut,
            Why = $"{cut.ToString(facts.Book.Household.Settings.Numbers)} less; {row.Why}",
        };
}
