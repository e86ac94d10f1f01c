namespace Payday.Statements.Sums;

/// <summary>Whether a line was known before.</summary>
public enum RepeatKind
{
    /// <summary>It is new.</summary>
    New,

    /// <summary>It is a known line again.</summary>
    Repeated,

    /// <summary>It is a line that was pending before, now booked.</summary>
    Booked,

    /// <summary>A known line has its day and amount but other words: only the balance or the person can say.</summary>
    Unsure,
}
