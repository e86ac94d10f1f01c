namespace Payday.Faults.Households;

/// <summary>Something that must never be: a fault of the program, a hang, money that doesn't add up.</summary>
internal sealed class CommandFailure(string kind, string detail) : Exception($"{kind}: {detail}")
{
    /// <summary>What kind it is, for a table.</summary>
    public string Kind { get; } = kind;
}
