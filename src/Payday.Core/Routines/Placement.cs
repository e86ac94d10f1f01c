using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>A part of the surplus and where it goes.</summary>
/// <param name="Target">A debt, a pot or the buffer.</param>
/// <param name="Id">The debt or pot; empty for the buffer.</param>
/// <param name="Amount">More than zero.</param>
public sealed record Placement(PlacementTarget Target, string Id, Money Amount);

/// <summary>Where surplus can go.</summary>
public enum PlacementTarget
{
    /// <summary>An extra payment on a debt.</summary>
    Debt,

    /// <summary>More in a pot.</summary>
    Pot,

    /// <summary>The buffer.</summary>
    Buffer,
}
