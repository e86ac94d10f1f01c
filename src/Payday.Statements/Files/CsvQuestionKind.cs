namespace Payday.Statements.Files;

/// <summary>What only the person can say.</summary>
public enum CsvQuestionKind
{
    /// <summary>Which of the figures is the day.</summary>
    DateOrder,

    /// <summary>Whether a mark stands before decimals or between thousands.</summary>
    DecimalMark,

    /// <summary>Whether this line came in or went out.</summary>
    Direction,

    /// <summary>Which column is the amount.</summary>
    AmountColumn,

    /// <summary>Which currency it is.</summary>
    Currency,
}
