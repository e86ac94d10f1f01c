namespace Payday.Core.Books;

/// <summary>As what a line of the bank's was written down.</summary>
public enum WrittenKind
{
    /// <summary>A payment of a due.</summary>
    Payment,

    /// <summary>A card purchase, or a refund of one.</summary>
    Purchase,

    /// <summary>An account entry.</summary>
    Entry,

    /// <summary>A move to a debt, or of cash.</summary>
    Move,

    /// <summary>A cash return.</summary>
    Return,
}
