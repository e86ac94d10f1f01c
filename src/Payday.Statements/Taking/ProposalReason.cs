namespace Payday.Statements.Taking;

/// <summary>What a proposal rests on.</summary>
public enum ProposalReason
{
    /// <summary>The person said so.</summary>
    Chosen,

    /// <summary>A rule that the person keeps.</summary>
    Rule,

    /// <summary>A due of that amount and day, or of nearly that amount and the same words.</summary>
    Due,

    /// <summary>Lines of the same party became that before.</summary>
    Before,

    /// <summary>A card purchase with the same words.</summary>
    Words,

    /// <summary>The bank calls it a charge or interest.</summary>
    Bank,

    /// <summary>Several lines of the account add up to it.</summary>
    Sum,

    /// <summary>The bank calls it cash, or its words are those of cash machines.</summary>
    Cash,
}
