using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Core.Status;

/// <summary>The way out of debt: as the routine of the next payday proposes it, at minimums alone, and in the other order.</summary>
/// <param name="Debts">Each debt, in the household's order.</param>
/// <param name="Order">The household's order.</param>
/// <param name="Extra">What the proposal puts on debts above their minimums, zero or more.</param>
/// <param name="AtMinimums">The course at minimums alone; the minimum of a debt that ends rolls on to the next.</param>
/// <param name="AsProposed">The course with the proposal.</param>
/// <param name="OtherOrder">The course with what would be proposed in the other order.</param>
/// <remarks>
/// The courses begin once the next payday has covered its minimums, as those of the routine's Surplus step do. Where no routine can be
/// worked out, they begin with the minimums that no payday has covered, and nothing is proposed.
/// </remarks>
public sealed record DebtsAhead(
    ImmutableArray<DebtAhead> Debts, DebtOrder Order, Money Extra, DebtProjection AtMinimums, DebtProjection AsProposed, DebtProjection OtherOrder)
{
    /// <summary>Of each debt, in the same order, what is charged on it until the courses begin: zero or more.</summary>
    public required ImmutableArray<Money> Soon { get; init; }

    /// <summary>All interest to come in a course, from today to the end of the debts that end; what is charged before it begins is among it.</summary>
    public Money InterestToCome(DebtProjection course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Debts.Zip(Soon).Where(pair => pair.First.Interest is not null).Aggregate(course.Interest, (sum, pair) => sum + pair.Second);
    }

    /// <summary>The order that the household doesn't follow.</summary>
    public DebtOrder Other => OtherWay.Than(Order);

    /// <summary>What the other order costs more in interest, below zero where less; null where the two leave different debts without an end.</summary>
    public Money? OtherCosts => AsProposed.Never.SequenceEqual(OtherOrder.Never) ? OtherOrder.Interest - AsProposed.Interest : null;

    /// <summary>What the proposal saves in interest, zero or more; null where it ends a debt that would never end.</summary>
    public Money? Saved => AsProposed.Never.SequenceEqual(AtMinimums.Never) ? AtMinimums.Interest - AsProposed.Interest : null;

    /// <summary>Works them out.</summary>
    /// <param name="book">The book. What was begun of the next payday counts, but for where its rest goes: that is as proposed.</param>
    /// <param name="today">The date.</param>
    public static DebtsAhead Of(Book book, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        DebtOrder order = book.Household.Settings.SurplusOrder;
        RoutinePlan? plan = Plan(book);
        DebtProjection minimums = plan?.Surplus.Without ?? Bare(book, today, order);
        DebtProjection proposed = plan?.Surplus.With ?? minimums;
        DebtProjection other = plan is null ? Bare(book, today, OtherWay.Than(order)) : OtherWay.Of(plan.Surplus).Course;
        Money nothing = Money.Zero(book.Household.Currency);
        ImmutableArray<Money> soon = [.. book.Household.Debts.Select(debt => SoonOn(plan, debt.Id, nothing))];
        return new DebtsAhead(
            [.. DebtGlance.Of(book).Select((glance, i) => new DebtAhead(
                glance,
                Charged(book.Ledger, glance.Debt.Id),
                proposed.Debts[i].Interest is { } later ? later + soon[i] : null,
                proposed.Debts[i],
                minimums.Debts[i]))],
            order,
            plan is null ? nothing : Money.Sum(plan.Surplus.Placements.Where(placement => placement.Target is MoveTarget.ToDebt).Select(placement => placement.Amount), nothing.Currency),
            minimums,
            proposed,
            other)
        {
            Soon = soon,
        };
    }

    private static RoutinePlan? Plan(Book book) =>
        Routine.Begun(book) is { Ok: true, Value: { } draft } && Routine.Plan(book, draft with { Placements = null }) is { Ok: true, Value: { } plan } ? plan : null;

    private static DebtProjection Bare(Book book, LocalDate today, DebtOrder order)
    {
        DebtOutlook outlook = DebtOutlook.Of(book, today);
        Money nothing = Money.Zero(book.Household.Currency);
        return DebtProjection.Project(outlook.From, outlook.Debts, nothing, nothing, order);
    }

    // What is charged until the course begins.
    private static Money SoonOn(RoutinePlan? plan, DebtId debt, Money nothing) =>
        plan is null ? nothing : Money.Sum(plan.Debts.Rows.Where(row => row.DebtId == debt).Select(row => row.Interest), nothing.Currency);

    // With what was entered as interest beside that of a month.
    private static Money Charged(Ledger ledger, DebtId debt)
    {
        var owed = new LedgerEnd.Owed(debt);
        return Money.Sum(
            ledger.Of(owed)
                .Where(movement => movement.From == owed && (movement.To is LedgerEnd.Outside { Kind: OutsideKind.Interest } || movement.To == LedgerEnd.Entered(EntryKind.Interest)))
                .Select(movement => movement.Amount),
            ledger.Balances.Currency);
    }
}
