using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>All that a data folder holds: the household, its ledger, and its paydays, closed or begun.</summary>
/// <param name="Household">Settings, people, bills, debts and pots.</param>
/// <param name="Ledger">Every movement.</param>
/// <param name="Closed">The closed paydays, oldest first.</param>
/// <param name="Draft">The payday begun and not yet closed, or null.</param>
public sealed record Book(
    Household Household,
    Ledger Ledger,
    ImmutableArray<ClosedPayday> Closed,
    RoutineDraft? Draft)
{
    // Another one with each change but that of the draft.
    private BookMemory memory = new();

    /// <summary>Settings, people, bills, debts and pots.</summary>
    public Household Household
    {
        get;
        init => (field, memory) = (value, new());
    } = Household;

    /// <summary>Every movement.</summary>
    public Ledger Ledger
    {
        get;
        init => (field, memory) = (value, new());
    } = Ledger;

    /// <summary>The closed paydays, oldest first.</summary>
    public ImmutableArray<ClosedPayday> Closed
    {
        get;
        init => (field, memory) = (value, new());
    } = Closed;

    /// <summary>What happened between paydays: fills, counts, card purchases and cash returns.</summary>
    public WeekRecords Weeks
    {
        get;
        init => (field, memory) = (value, new());
    } = WeekRecords.None;

    /// <summary>Whether anything was closed, counted or bought, so that the start is history.</summary>
    public bool HasHistory => !Closed.IsEmpty || !Weeks.IsEmpty;

    /// <summary>The last closed payday, or null.</summary>
    public ClosedPayday? LastClosed => Closed.IsEmpty ? null : Closed[^1];

    /// <summary>The first date on which a payday can still be closed.</summary>
    public LocalDate OpenFrom => LastClosed is { } last ? last.Payday.PlusDays(1) : Household.Start;

    /// <summary>What is worked out from all but the draft, once.</summary>
    internal T Remembered<T>(Func<Book, T> workOut)
        where T : class => memory.Of(this, workOut);

    /// <summary>A book that begins with a household and its opening balances.</summary>
    public static Book Begin(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        return new Book(household, Ledger.Empty(household.Currency).Add(Opening.Movements(household)), [], null);
    }
}
