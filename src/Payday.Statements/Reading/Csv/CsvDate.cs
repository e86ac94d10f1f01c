using System.Buffers;
using NodaTime;
using Payday.Statements.Files;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Reads a date as banks write it in CSV, in one of the three orders.</summary>
internal static class CsvDate
{
    // With weekday, month's name and time.
    private const int Longest = 40;
    private const int ShortestWord = 3;

    private static readonly SearchValues<char> TimeMarks = SearchValues.Create("0123456789:.+-TZ ,APMapm");

    /// <summary>Whether a cell is a date in any order.</summary>
    public static bool IsAny(string cell) =>
        cell.Length is >= 6 and <= Longest && cell.AsSpan().ContainsAnyInRange('0', '9')
        && (Read(cell, CsvDateOrder.YearFirst) is not null || Read(cell, CsvDateOrder.DayFirst) is not null || Read(cell, CsvDateOrder.MonthFirst) is not null);

    /// <summary>The day of a cell, or null. A time behind it, and what zone that is in, moves nothing.</summary>
    public static LocalDate? Read(ReadOnlySpan<char> cell, CsvDateOrder order)
    {
        if (cell.Length is < 6 or > Longest)
        {
            return null;
        }

        Span<Piece> pieces = stackalloc Piece[3];
        int count = 0;
        int at = 0;
        while (at < cell.Length && count < 3)
        {
            int start = at;
            if (char.IsAsciiDigit(cell[at]))
            {
                while (at < cell.Length && char.IsAsciiDigit(cell[at]))
                {
                    at++;
                }

                if (at - start is 8 && count == 0)
                {
                    return IsBehind(cell[at..]) ? Compact(cell[start..at], order) : null;
                }

                if (at - start > 4)
                {
                    return null;
                }

                pieces[count++] = new Piece(DayReading.Number(cell[start..at]), at - start, IsName: false);
            }
            else if (char.IsLetter(cell[at]))
            {
                while (at < cell.Length && char.IsLetter(cell[at]))
                {
                    at++;
                }

                int month = at - start >= ShortestWord ? MonthNames.Find(cell[start..at]) : 0;
                bool isWeekday = month == 0 && count == 0 && IsWeekday(cell[start..at]);
                if (month == 0 && !isWeekday)
                {
                    return null;
                }

                if (month > 0)
                {
                    pieces[count++] = new Piece(month, at - start, IsName: true);
                }
            }
            else if (cell[at] is '-' or '/' or '.' or ' ' or '\u00A0' || (cell[at] == ',' && count > 0 && HasLetters(cell)))
            {
                at++;
            }
            else
            {
                return null;
            }
        }

        // Figures parted by points begin with a year of two digits nowhere.
        bool isPointed = order == CsvDateOrder.YearFirst && pieces[0].Digits < 4 && cell[..at].Contains('.');
        return count == 3 && !isPointed && IsBehind(cell[at..]) ? Of(pieces, order) : null;
    }

    private static LocalDate? Compact(ReadOnlySpan<char> digits, CsvDateOrder order)
    {
        (int year, int month, int day) = order switch
        {
            CsvDateOrder.YearFirst => (DayReading.Number(digits[..4]), DayReading.Number(digits[4..6]), DayReading.Number(digits[6..8])),
            CsvDateOrder.DayFirst => (DayReading.Number(digits[4..8]), DayReading.Number(digits[2..4]), DayReading.Number(digits[..2])),
            _ => (DayReading.Number(digits[4..8]), DayReading.Number(digits[..2]), DayReading.Number(digits[2..4])),
        };
        return Exact(year, month, day);
    }

    private static LocalDate? Of(ReadOnlySpan<Piece> pieces, CsvDateOrder order)
    {
        Piece first = pieces[0];
        Piece second = pieces[1];
        Piece third = pieces[2];
        int names = (first.IsName ? 1 : 0) + (second.IsName ? 1 : 0) + (third.IsName ? 1 : 0);
        if (names > 1 || third.IsName)
        {
            return null;
        }

        // A year of four digits and a month's name each leave one reading only, whatever the order.
        if (first is { Digits: 4, IsName: false })
        {
            return order == CsvDateOrder.YearFirst || names == 1 ? Exact(first.Number, second.Number, third.Number) : null;
        }

        if (order == CsvDateOrder.YearFirst)
        {
            return names == 0 && first.Digits == 2 && third.Digits <= 2 ? Exact(YearOf(first), second.Number, third.Number) : null;
        }

        if (third.Digits is not (2 or 4))
        {
            return null;
        }

        bool dayFirst = names == 1 ? second.IsName : order == CsvDateOrder.DayFirst;
        return dayFirst ? Exact(YearOf(third), second.Number, first.Number) : Exact(YearOf(third), first.Number, second.Number);
    }

    private static int YearOf(Piece piece) => piece.Digits == 4 ? piece.Number : piece.Number + (piece.Number < 80 ? 2000 : 1900);

    private static LocalDate? Exact(int year, int month, int day) =>
        DayReading.Of(year, month, day) is { WasMoved: false, Date: { } date } ? date : null;

    // A time and its zone: "T10:33:22.5+01:00", " 10:33 PM", "Z"; or a dot, as in "5. 3. 2026.".
    private static bool IsBehind(ReadOnlySpan<char> rest) =>
        rest.IsEmpty || rest is "." || (rest[0] is ' ' or 'T' or ',' or ':' && !rest.ContainsAnyExcept(TimeMarks));

    // Mo, Thu, Thursday; which day it is says nothing that the figures don't.
    private static bool IsWeekday(ReadOnlySpan<char> word) => word.Length <= ShortestWord || word.EndsWith("day", StringComparison.OrdinalIgnoreCase);

    private static bool HasLetters(ReadOnlySpan<char> cell)
    {
        foreach (char c in cell)
        {
            if (char.IsLetter(c))
            {
                return true;
            }
        }

        return false;
    }

    private readonly record struct Piece(int Number, int Digits, bool IsName);
}
