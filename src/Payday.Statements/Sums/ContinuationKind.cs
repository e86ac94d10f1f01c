namespace Payday.Statements.Sums;

/// <summary>What two balances say of the lines between them.</summary>
public enum ContinuationKind
{
    /// <summary>They agree, and lines that may be repeats are repeats. So where there are none.</summary>
    UnsureAreRepeats,

    /// <summary>They agree where all lines that may be repeats are new.</summary>
    UnsureAreNew,

    /// <summary>They agree either way, as the lines that may be repeats come to nothing.</summary>
    Unknown,

    /// <summary>They don't agree: a line is missing or there twice.</summary>
    Breaks,
}
