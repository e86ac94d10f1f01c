using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>What became of a fill of the wallet.</summary>
/// <param name="Key">Which part it is.</param>
/// <param name="State">Done or skipped.</param>
/// <param name="Date">When it went in the wallet, or when it was skipped.</param>
/// <param name="Amount">
/// What went in: the part, or less where home had less of the pot; zero where it was skipped.
/// </param>
/// <param name="Movement">The number of its movement, or null where nothing moved.</param>
public sealed record WalletFill(FillKey Key, FillState State, LocalDate Date, Money Amount, long? Movement)
{
    /// <summary>How it was marked before, so that this mark can be taken back; null where it waited. That one has none before it.</summary>
    public WalletFill? Before { get; init; }

    /// <summary>Whether a purchase, a move or an entry had taken it as done, and a person said after that that it is: nothing moved then.</summary>
    public bool IsConfirmed => State == FillState.Done && Before is { State: FillState.Done } before && before.Movement == Movement;
}

/// <summary>What became of a fill.</summary>
public enum FillState
{
    /// <summary>The cash is in the wallet.</summary>
    Done,

    /// <summary>The cash stays at home.</summary>
    Skipped,
}
