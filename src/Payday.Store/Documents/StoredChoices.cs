using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>The choices that documents hold, each with its words.</summary>
/// <remarks>Kinds of purposes and who is outside have theirs in the keys of ledger ends, the choices of the household file in <see cref="Formats.Words"/>.</remarks>
internal static class StoredChoices
{
    public static StoredWords<RoutineStep> Steps { get; } = new(
        ("Income", RoutineStep.Income),
        ("Bills", RoutineStep.Bills),
        ("DebtMinimums", RoutineStep.DebtMinimums),
        ("Pots", RoutineStep.Pots),
        ("Surplus", RoutineStep.Surplus),
        ("Withdrawal", RoutineStep.Withdrawal),
        ("Slip", RoutineStep.Slip));

    public static StoredWords<SetAsideMode> SetAsideModes { get; } =
        new(("Level", SetAsideMode.Level), ("AsTheyFall", SetAsideMode.AsTheyFall));

    public static StoredWords<PlacementTarget> Targets { get; } =
        new(("Debt", PlacementTarget.Debt), ("Pot", PlacementTarget.Pot), ("Buffer", PlacementTarget.Buffer), ("Bill", PlacementTarget.Bill));

    public static StoredWords<FillState> FillStates { get; } = new(("Done", FillState.Done), ("Skipped", FillState.Skipped));

    public static StoredWords<OwedKind> OwedKinds { get; } = new(("Purchase", OwedKind.Purchase), ("MovesOn", OwedKind.MovesOn), ("Move", OwedKind.Move));

    public static StoredWords<EntryKind> EntryKinds { get; } = new(
        ("Refund", EntryKind.Refund),
        ("Interest", EntryKind.Interest),
        ("Gift", EntryKind.Gift),
        ("Transfer", EntryKind.Transfer),
        ("Fee", EntryKind.Fee),
        ("Payment", EntryKind.Payment),
        ("Income", EntryKind.Income),
        ("Borrowing", EntryKind.Borrowing),
        ("Loss", EntryKind.Loss));

    public static StoredWords<WrittenKind> WrittenKinds { get; } = new(
        ("Payment", WrittenKind.Payment), ("Purchase", WrittenKind.Purchase), ("Entry", WrittenKind.Entry), ("Move", WrittenKind.Move), ("Return", WrittenKind.Return));

    public static StoredWords<LineUse> LineUses { get; } = new(
        ("For", LineUse.For),
        ("Income", LineUse.Income),
        ("Fee", LineUse.Fee),
        ("Interest", LineUse.Interest),
        ("Gift", LineUse.Gift),
        ("Transfer", LineUse.Transfer),
        ("Leave", LineUse.Leave),
        ("Cash", LineUse.Cash),
        ("Return", LineUse.Return));

    public static StoredWords<DifferenceEnd> DifferenceEnds { get; } =
        new(("Explained", DifferenceEnd.Explained), ("TurnedUp", DifferenceEnd.TurnedUp));
}
