using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.DuePayments;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.Pots;
using Payday.Core.StatementTaking;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Texts;
using NodaTime;

namespace Payday.Statements.Taking;

/// <summary>What a line that the book has nothing for might become (design, rule 15). Precision first: where nothing speaks clearly nothing is said.</summary>
/// <remarks>Asked in turn: the person's rules; what lines of the same party became before, sure from twice on; the bank's own word for charges and interest, and for cash; card purchases whose words are all in the line, of one pot alone.</remarks>
internal sealed class Proposals
{
    private const int SureTimes = 2;

    // Of a bill only where one is due about then.
    private const int DaysAround = 15;

    private readonly Book book;
    private readonly PartyHabits habits;
    private readonly Lazy<(List<string> Words, PotId? Pot)[]> bought;
    private readonly Lazy<DueLine[]> dues;
    private readonly Lazy<(SourceId Source, LocalDate Date)[]> pays;

    public Proposals(Book book, PartyHabits habits, LocalDate last)
    {
        this.book = book;
        this.habits = habits;
        HashSet<PotId> pots = [.. book.Household.Pots.Select(pot => pot.Id)];
        bought = new(() =>
        [
            .. book.Weeks.StandingPurchases
                .Where(purchase => purchase.Amount.IsPositive && (purchase.PotId is not { } pot || pots.Contains(pot)))
                .Select(purchase => (LineWords.Of(purchase.What), purchase.PotId))
                .Where(pair => pair.Item1.Count > 0),
        ]);
        pays = new(() =>
        [
            .. book.Household.Paydays.Between(book.OpenFrom, LocalDate.Max(book.OpenFrom, last).PlusDays(DaysAround))
                .SelectMany(payday => payday.Sources.Select(source => (source, payday.Date))),
        ]);
        dues = new(() => [.. DueLines.Of(book, last.PlusDays(DaysAround))]);
    }

    /// <summary>The proposal for a line; null for none.</summary>
    public Proposal? Of(StatementLine line, LeftoverKind looks) =>
        ByRule(line)
        ?? ByHabit(line)
        ?? looks switch
        {
            LeftoverKind.Fee => new Proposal(new LineTarget(LineUse.Fee), ProposalReason.Bank, true),
            LeftoverKind.Interest => new Proposal(new LineTarget(LineUse.Interest), ProposalReason.Bank, true),
            _ when CashWords.Are(line) => ByCash(line),
            _ => ByWords(line, looks),
        };

    /// <summary>What the person's rules say of a line; null for nothing.</summary>
    /// <remarks>A bill without a due about then can't be paid, pay about an open payday comes with that, and a cash return is what is owed back: else none of them is sure.</remarks>
    public Proposal? ByRule(StatementLine line) => RuleMatch.Of(book.Weeks.StatementRules, line) is { } rule && IsThere(rule.Target) && FitsWay(rule.Target, line)
        ? new Proposal(rule.Target, ProposalReason.Rule, IsDue(rule.Target, line) && !WaitsForAPayday(rule.Target, line) && (rule.Target.Use != LineUse.Return || CashLine.ReturnOf(book, line.Amount) is not null))
        : null;

    private Proposal? ByHabit(StatementLine line) => habits.Of(line) is { } before && IsThere(before.Target) && FitsWay(before.Target, line) && IsDue(before.Target, line)
        ? new Proposal(before.Target, ProposalReason.Before, before.Times >= SureTimes)
        : null;

    // Fetched: for the one cash pot that money waits for, or the only one; else as loose notes. Brought: what is owed back, where it is that.
    private Proposal? ByCash(StatementLine line)
    {
        if (line.Amount.IsPositive)
        {
            return CashLine.ReturnOf(book, line.Amount) is not null ? new Proposal(new LineTarget(LineUse.Return), ProposalReason.Cash, false)
                : book.Ledger.Balances[MoveEnds.Loose] >= line.Amount ? new Proposal(new LineTarget(LineUse.Cash, MoveEnds.Loose), ProposalReason.Cash, false)
                : null;
        }

        Pot[] cash = [.. book.Household.Pots.Where(pot => pot.Place == Place.Cash)];
        Pot[] waiting = [.. cash.Where(pot => book.Ledger.Balances[LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))] >= -line.Amount)];
        LedgerEnd end = (waiting, cash) switch
        {
            ([var only], _) => MoveEnds.OfPot(only),
            (_, [var only]) => MoveEnds.OfPot(only),
            _ => MoveEnds.Loose,
        };
        return new Proposal(new LineTarget(LineUse.Cash, end), ProposalReason.Cash, false);
    }

    private Proposal? ByWords(StatementLine line, LeftoverKind looks)
    {
        if (line.Amount.IsPositive ? looks != LeftoverKind.Refund : line.Kind is not (LineKind.Other or LineKind.Card))
        {
            return null;
        }

        HashSet<string> words = [.. LineWords.Of(line.Party, line.Text)];
        PotId?[] pots = [.. bought.Value.Where(pair => pair.Words.TrueForAll(words.Contains)).Select(pair => pair.Pot).Distinct()];
        return pots is [var only]
            ? new Proposal(new LineTarget(LineUse.For, book.Household.Pots.FirstOrDefault(pot => pot.Id == only) is { } pot ? MoveEnds.OfPot(pot) : MoveEnds.Buffer), ProposalReason.Words, false)
            : null;
    }

    private bool IsThere(LineTarget target) => (target.Other is not { } other || LedgerEnds.IsOf(book.Household, other)) && target.End switch
    {
        LedgerEnd.Outside { SourceId: { } source } => book.Household.Sources.Any(known => known.Id == source),
        { } end => LedgerEnds.IsOf(book.Household, end),
        null => true,
    };

    private static bool FitsWay(LineTarget target, StatementLine line) => target switch
    {
        { Use: LineUse.Income or LineUse.Return } => line.Amount.IsPositive,
        { Use: LineUse.For, End: LedgerEnd.Owed } => line.Amount.IsNegative,
        _ => true,
    };

    private bool WaitsForAPayday(LineTarget target, StatementLine line) => target is { Use: LineUse.Income, End: LedgerEnd.Outside { SourceId: { } source } }
        && pays.Value.Any(pay => pay.Source == source && Math.Abs(Period.DaysBetween(pay.Date, line.Date)) <= DaysAround);

    private bool IsDue(LineTarget target, StatementLine line) => target is not { Use: LineUse.For, End: LedgerEnd.At { Purpose.BillId: { } bill } } || line.Amount.IsPositive
        || Array.Exists(dues.Value, due => due.Key.Bill == bill && Math.Abs(Period.DaysBetween(due.Date, line.Date)) <= DaysAround);
}
