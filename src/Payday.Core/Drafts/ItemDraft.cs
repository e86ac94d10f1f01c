namespace Payday.Core.Drafts;

/// <summary>A draft of a source, bill, debt or pot.</summary>
public abstract record ItemDraft
{
    /// <summary>What the ledger calls it whatever its name becomes; missing, it is made from the name.</summary>
    public string? Id { get; init; }

    /// <summary>What the person calls it.</summary>
    public string? Name { get; init; }
}
