namespace Payday.Core.Drafts;

/// <summary>Where notes come from.</summary>
public enum BankKind
{
    /// <summary>A teller, who has any notes in use.</summary>
    Teller,

    /// <summary>A machine, which has only its own.</summary>
    Machine,
}
