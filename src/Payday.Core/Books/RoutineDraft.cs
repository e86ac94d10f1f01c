using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Books;

/// <summary>
/// A payday routine begun: only what the person decided. Proposals are computed anew from it each time,
/// so a change of an earlier step never leaves a stale figure in a later one.
/// </summary>
public sealed record RoutineDraft
{
    /// <summary>A routine in which nothing has been decided.</summary>
    /// <param name="payday">Its payday.</param>
    public RoutineDraft(LocalDate payday) => Payday = payday;

    /// <summary>The payday.</summary>
    public LocalDate Payday { get; init; }

    /// <summary>The step to go on with.</summary>
    public RoutineStep Step { get; init; } = RoutineStep.Income;

    /// <summary>By source id: what really came.</summary>
    public ImmutableSortedDictionary<SourceId, Money> Incomes { get; init; } = ImmutableSortedDictionary<SourceId, Money>.Empty;

    /// <summary>Income beyond the sources, by the name given to it.</summary>
    public ImmutableSortedDictionary<string, Money> OneOffs { get; init; } = ImmutableSortedDictionary.Create<string, Money>(StringComparer.Ordinal);

    /// <summary>By due: what is known of it beyond the household's settings.</summary>
    public ImmutableSortedDictionary<DueKey, DueDecision> Dues { get; init; } =
        ImmutableSortedDictionary<DueKey, DueDecision>.Empty;

    /// <summary>How money is held back this time, where that differs from the household's setting.</summary>
    public SetAsideMode? SetAsides { get; init; }

    /// <summary>What the account's buffer gives this time, zero or more, or null while the proposal stands.</summary>
    public Money? FromBuffer { get; init; }

    /// <summary>What pays off an overdraft this time, zero or more, or null while the proposal stands.</summary>
    public Money? ToOverdraft { get; init; }

    /// <summary>By minimum: what is paid when it is due.</summary>
    public ImmutableSortedDictionary<DueKey, Money> Minimums { get; init; } = ImmutableSortedDictionary<DueKey, Money>.Empty;

    /// <summary>By minimum: whether it has left the account, where that differs from the proposal.</summary>
    public ImmutableSortedDictionary<DueKey, bool> PaidMinimums { get; init; } = ImmutableSortedDictionary<DueKey, bool>.Empty;

    /// <summary>By debt id: what is paid on each of its minimums that has no amount of its own, as drafts of the first versions have it.</summary>
    public ImmutableSortedDictionary<DebtId, Money> DebtPayments { get; init; } = ImmutableSortedDictionary<DebtId, Money>.Empty;

    /// <summary>By pot id: what goes in.</summary>
    public ImmutableSortedDictionary<PotId, Money> Fills { get; init; } = ImmutableSortedDictionary<PotId, Money>.Empty;

    /// <summary>Where the surplus goes, or null while the proposal stands.</summary>
    public ImmutableArray<Placement>? Placements { get; init; }

    /// <summary>By pot and week: the notes chosen by hand, by value in minor units.</summary>
    public ImmutableSortedDictionary<PartKey, Notes> Notes { get; init; } =
        ImmutableSortedDictionary<PartKey, Notes>.Empty;

    /// <summary>Whether the loose notes at home stay where they are this time.</summary>
    public bool LeavesNotesAtHome { get; init; }

    /// <summary>Whether owed-back notes go straight into pots this time, instead of to the bank.</summary>
    public bool UsesOwedBack { get; init; }

    /// <summary>Whether a teller is asked this time, where the household usually uses a machine.</summary>
    public bool AsksATeller { get; init; }

    /// <summary>The machine that is used this time, where the household usually asks a teller; null for none.</summary>
    public CashSource.Machine? Machine { get; init; }

    /// <summary>Where the notes come from this time.</summary>
    /// <param name="usual">Where they usually come from.</param>
    public CashSource BankFor(CashSource usual) => AsksATeller ? new CashSource.Teller() : Machine ?? usual;

    /// <summary>Whether anything has been decided; being at a later step is no decision.</summary>
    public bool HasDecisions =>
        !Incomes.IsEmpty || !OneOffs.IsEmpty || !Dues.IsEmpty || SetAsides is not null || FromBuffer is not null || ToOverdraft is not null || !Minimums.IsEmpty || !PaidMinimums.IsEmpty || !DebtPayments.IsEmpty || !Fills.IsEmpty
        || Placements is not null || !Notes.IsEmpty || LeavesNotesAtHome || UsesOwedBack || AsksATeller || Machine is not null;
}
