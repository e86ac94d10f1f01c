using System.Buffers;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Mt940;

/// <summary>A line (:61:) cut into its parts, and the text that follows it.</summary>
internal sealed record Mt940Entry
{
    private static readonly SearchValues<char> AmountMarks = SearchValues.Create("0123456789,.");

    /// <summary>The line of the file where it begins.</summary>
    public required int Place { get; init; }

    /// <summary>Its dates as written.</summary>
    public required string Dates { get; init; }

    /// <summary>The day from which the bank counts interest.</summary>
    public required DayReading ValueDate { get; init; }

    /// <summary>The day of booking; that of the value where it isn't given.</summary>
    public required DayReading Date { get; init; }

    /// <summary>Which way it goes.</summary>
    public required Mt940Mark Mark { get; init; }

    /// <summary>Whether a minus stands after the mark, which should not be: the balances say what it means.</summary>
    public bool HasMinus { get; init; }

    /// <summary>The amount as written, without a sign.</summary>
    public required string Amount { get; init; }

    /// <summary>The three letters of the kind, such as TRF.</summary>
    public required string Type { get; init; }

    /// <summary>The owner's reference.</summary>
    public required string Reference { get; init; }

    /// <summary>The bank's reference.</summary>
    public required string BankReference { get; init; }

    /// <summary>What the bank adds in the second line.</summary>
    public required string Supplement { get; init; }

    /// <summary>The fields :86: that follow it.</summary>
    public List<string> Texts { get; } = [];

    /// <summary>The parts of a field, or null where it isn't built like one.</summary>
    public static Mt940Entry? Of(Mt940Field field)
    {
        int end = field.Value.IndexOf('\n', StringComparison.Ordinal);
        ReadOnlySpan<char> rest = end < 0 ? field.Value : field.Value.AsSpan(0, end);
        DayReading value = Mt940Date.Of(rest);
        if (value.Date is not { } valueDate)
        {
            return null;
        }

        rest = rest[6..];
        DayReading date = value;
        if (rest.Length >= 4 && !rest[..4].ContainsAnyExceptInRange('0', '9'))
        {
            date = Mt940Date.Nearest(rest[..4], valueDate) is { Date: not null } entry ? entry : value;
            rest = rest[4..];
        }

        if (Mt940Mark.Of(rest) is not { } mark)
        {
            return null;
        }

        rest = rest[mark.Length..];
        bool hasMinus = rest.StartsWith('-');
        rest = hasMinus ? rest[1..] : rest;
        int digits = rest.IndexOfAnyExcept(AmountMarks);
        ReadOnlySpan<char> amount = digits < 0 ? rest : rest[..digits];
        ReadOnlySpan<char> behind = digits < 0 ? [] : rest[digits..];
        ReadOnlySpan<char> references = behind.Length >= 4 ? behind[4..] : [];
        int bank = references.IndexOf("//", StringComparison.Ordinal);
        return new Mt940Entry
        {
            Place = field.Place,
            Dates = field.Value[..Math.Min(field.Value.Length, 10)],
            ValueDate = value,
            Date = date,
            Mark = mark,
            HasMinus = hasMinus,
            Amount = amount.ToString(),
            Type = behind.Length >= 4 ? behind[1..4].ToString().ToUpperInvariant() : "",
            Reference = (bank < 0 ? references : references[..bank]).Trim().ToString(),
            BankReference = bank < 0 ? "" : references[(bank + 2)..].Trim().ToString(),
            Supplement = end < 0 ? "" : field.Value[(end + 1)..],
        };
    }
}
