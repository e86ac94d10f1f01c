namespace Payday.Statements.Files;

/// <summary>How a CSV file is read: what was found or answered, kept for the next file of the account. What is null is found anew.</summary>
/// <param name="Header">The header it is for, its cells joined by bars; for files without one the number of columns. Another header is found or asked anew.</param>
public sealed record CsvProfile(string Header)
{
    /// <summary>How dates are written.</summary>
    public CsvDateOrder? DateOrder { get; init; }

    /// <summary>The mark before the decimals, a point or a comma.</summary>
    public char? DecimalMark { get; init; }

    /// <summary>Whether amounts above zero, or those with the direction <see cref="OutWord"/>, went out; for two columns always false.</summary>
    public bool? AboveZeroGoesOut { get; init; }

    /// <summary>The word in the column of directions that means out.</summary>
    public string? OutWord { get; init; }

    /// <summary>The columns.</summary>
    public CsvColumns? Columns { get; init; }

    /// <summary>The code of the currency.</summary>
    public string? CurrencyCode { get; init; }
}
