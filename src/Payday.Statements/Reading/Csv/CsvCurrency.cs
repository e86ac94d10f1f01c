using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Statements.Files;

namespace Payday.Statements.Reading.Csv;

/// <summary>Finds the currency of a table.</summary>
internal static class CsvCurrency
{
    // Only signs of one currency: the dollar's and the crown's are of many.
    private static readonly (string Sign, string Code)[] Signs = [("\u20AC", "EUR"), ("\u00A3", "GBP"), ("\u20B9", "INR"), ("R$", "BRL"), ("z\u0142", "PLN"), ("K\u010D", "CZK")];

    /// <summary>The column that holds a known code in every row that has something there, or null.</summary>
    public static int? ColumnOf(CsvTable table, IReadOnlyList<CsvRow> rows)
    {
        for (int column = 0; column < table.Width; column++)
        {
            bool any = false;
            bool all = true;
            foreach (CsvRow row in rows)
            {
                string cell = row[column];
                any |= cell.Length > 0;
                all &= cell.Length == 0 || Currency.TryFromCode(cell, out _);
                if (!all)
                {
                    break;
                }
            }

            if (any && all)
            {
                return column;
            }
        }

        return null;
    }

    /// <summary>The currency by the profile, the column, a code in the names or around the table, a sign at an amount, the household; null where none says it.</summary>
    public static Currency? Of(CsvTable table, IReadOnlyList<CsvRow> rows, CsvProfile? profile, Currency? fallback)
    {
        if (ColumnOf(table, rows) is { } column)
        {
            ImmutableArray<string> codes = [.. rows.Select(row => row[column]).Where(code => code.Length > 0)];
            string code = fallback is { } home && codes.Contains(home.Code)
                ? home.Code
                : codes.GroupBy(one => one, StringComparer.Ordinal).MaxBy(group => group.Count())!.Key;
            return Currency.FromCode(code);
        }

        return InTexts(table.Header?.Cells ?? []) ?? InTexts(table.Before.SelectMany(row => row.Cells)) ?? BySign(rows)
            ?? (Currency.TryFromCode(profile?.CurrencyCode, out Currency remembered) ? remembered : fallback);
    }

    private static Currency? InTexts(IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            foreach (string word in text.Split([' ', '(', ')', '[', ']', ':', '/', '_', '-', ','], StringSplitOptions.RemoveEmptyEntries))
            {
                if (word != "XXX" && Currency.TryFromCode(word, out Currency currency))
                {
                    return currency;
                }
            }
        }

        return null;
    }

    private static Currency? BySign(IReadOnlyList<CsvRow> rows)
    {
        foreach (CsvRow row in rows.Take(20))
        {
            foreach (string cell in row.Cells.Where(cell => cell.Length < 20 && cell.Any(char.IsAsciiDigit)))
            {
                foreach ((string sign, string code) in Signs)
                {
                    if (cell.Contains(sign, StringComparison.Ordinal) || (cell.Contains(code, StringComparison.Ordinal) && !cell.Any(char.IsAsciiLetterLower)))
                    {
                        return Currency.FromCode(code);
                    }
                }
            }
        }

        return null;
    }
}
