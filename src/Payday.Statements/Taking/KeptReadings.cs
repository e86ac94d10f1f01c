using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Statements.Files;

namespace Payday.Statements.Taking;

/// <summary>How a CSV file is read, as a book keeps it.</summary>
public static class KeptReadings
{
    /// <summary>The profile as it is kept.</summary>
    public static KeptReading Of(CsvProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var answers = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        Add(answers, "dates", profile.DateOrder switch
        {
            CsvDateOrder.YearFirst => "year",
            CsvDateOrder.DayFirst => "day",
            CsvDateOrder.MonthFirst => "month",
            _ => null,
        });
        Add(answers, "mark", profile.DecimalMark?.ToString());
        Add(answers, "out", profile.AboveZeroGoesOut is { } isOut ? isOut ? "above" : "below" : null);
        Add(answers, "outWord", profile.OutWord);
        Add(answers, "columns", profile.Columns is { } columns
            ? string.Join(',', new int?[] { columns.Date, columns.Amount, columns.Out, columns.Direction, columns.Balance }.Select(at => at?.ToString(CultureInfo.InvariantCulture) ?? ""))
            : null);
        Add(answers, "currency", profile.CurrencyCode);
        return new KeptReading(profile.Header, answers.ToImmutable());
    }

    /// <summary>The profile that was kept; what can't be understood of it is found anew.</summary>
    public static CsvProfile ProfileOf(KeptReading kept)
    {
        ArgumentNullException.ThrowIfNull(kept);
        return new CsvProfile(kept.Header)
        {
            DateOrder = Answer(kept, "dates") switch
            {
                "year" => CsvDateOrder.YearFirst,
                "day" => CsvDateOrder.DayFirst,
                "month" => CsvDateOrder.MonthFirst,
                _ => null,
            },
            DecimalMark = Answer(kept, "mark") is [var mark] ? mark : null,
            AboveZeroGoesOut = Answer(kept, "out") switch { "above" => true, "below" => false, _ => null },
            OutWord = Answer(kept, "outWord"),
            Columns = ColumnsOf(Answer(kept, "columns")),
            CurrencyCode = Answer(kept, "currency"),
        };
    }

    private static CsvColumns? ColumnsOf(string? text)
    {
        int?[] places = [.. (text ?? "").Split(',').Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out int at) ? at : (int?)null)];
        return places is [{ } date, { } amount, var went, var direction, var balance] ? new CsvColumns(date, amount, went, direction, balance) : null;
    }

    private static string? Answer(KeptReading kept, string asked) => kept.Answers.GetValueOrDefault(asked);

    private static void Add(ImmutableSortedDictionary<string, string>.Builder answers, string asked, string? answer)
    {
        if (answer is not null)
        {
            answers[asked] = answer;
        }
    }
}
