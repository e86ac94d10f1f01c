namespace Payday.Core.Pots;

/// <summary>Where what is left of a pot moves on to.</summary>
/// <param name="Target">Another pot, a debt, or the account's buffer.</param>
/// <param name="Id">The pot or debt; empty for the buffer.</param>
public sealed record MoveTarget(PlacementTarget Target, string Id)
{
    /// <summary>The account's buffer.</summary>
    public static MoveTarget Buffer { get; } = new(PlacementTarget.Buffer, "");

    /// <summary>Another pot.</summary>
    public static MoveTarget Pot(string potId) => new(PlacementTarget.Pot, potId);

    /// <summary>An extra payment on a debt.</summary>
    public static MoveTarget Debt(string debtId) => new(PlacementTarget.Debt, debtId);
}
