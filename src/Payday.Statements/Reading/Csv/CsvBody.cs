using System.Collections.Immutable;
using NodaTime;
using Payday.Statements.Faults;
using Payday.Statements.Files;

namespace Payday.Statements.Reading.Csv;

/// <summary>The lines of a table: which are booked, which pending, and how their dates can be read.</summary>
internal sealed record CsvBody
{
    // One odd cell among many is a damaged line; more than that, and the order is another.
    private const int LeastReadable = 90;

    /// <summary>The column of booking dates.</summary>
    public required int DateColumn { get; init; }

    /// <summary>The column of value dates, or null.</summary>
    public required int? ValueDateColumn { get; init; }

    /// <summary>The booked rows, in the file's order.</summary>
    public required List<CsvRow> Booked { get; init; }

    /// <summary>The rows that aren't booked yet.</summary>
    public required List<CsvRow> Pending { get; init; }

    /// <summary>How many rows couldn't be read.</summary>
    public required int Broken { get; init; }

    /// <summary>The orders that the dates allow, which give different days.</summary>
    public required ImmutableArray<CsvDateOrder> Orders { get; init; }

    /// <summary>The lines of a table; null where no column has dates.</summary>
    public static CsvBody? Of(CsvTable table, CsvProfile? profile, LocalDate? today, FaultList faults)
    {
        int[] counts = DatesByColumn(table);
        int? column = profile?.Columns?.Date ?? DateColumnOf(table, counts, CsvRole.Date, CsvRole.None, CsvRole.ValueDate);
        if (column is not { } date || date >= table.Width)
        {
            return null;
        }

        var booked = new List<CsvRow>();
        var pending = new List<CsvRow>();
        int status = Array.IndexOf(table.Roles, CsvRole.Status);
        bool isPendingBlock = table.Before.Any(row => row.Filled == 1 && CsvWords.SaysPending(string.Concat(row.Cells)));
        int broken = 0;
        foreach (CsvRow row in table.Body)
        {
            bool isHeader = table.Header is { } header && row.Cells.SequenceEqual(header.Cells);
            if (row.Filled <= 1)
            {
                isPendingBlock = row.Filled == 1 ? CsvWords.SaysPending(string.Concat(row.Cells)) : isPendingBlock;
            }
            else if (!isHeader && row[date].Length > 0 && !CsvDate.IsAny(row[date]))
            {
                faults.Add(FaultKind.BrokenLine, row.Line, string.Join(' ', row.Cells));
                broken++;
            }
            else if (!isHeader)
            {
                bool isPending = row[date].Length == 0 || isPendingBlock || (status >= 0 && CsvWords.SaysPending(row[status]));
                (isPending ? pending : booked).Add(row);
            }
        }

        int? value = DateColumnOf(table, counts, CsvRole.ValueDate);
        return new CsvBody
        {
            DateColumn = date,
            ValueDateColumn = value == date ? null : value,
            Booked = booked,
            Pending = pending,
            Broken = broken,
            Orders = OrdersOf(booked, date, profile?.DateOrder, today),
        };
    }

    private static int[] DatesByColumn(CsvTable table)
    {
        int[] counts = new int[table.Width];
        foreach (CsvRow row in table.Body)
        {
            for (int i = 0; i < table.Width; i++)
            {
                counts[i] += CsvDate.IsAny(row[i]) ? 1 : 0;
            }
        }

        return counts;
    }

    private static int? DateColumnOf(CsvTable table, int[] counts, params ReadOnlySpan<CsvRole> roles)
    {
        int most = counts.Max();
        foreach (CsvRole role in roles)
        {
            for (int i = 0; i < table.Width; i++)
            {
                if (most > 0 && counts[i] * 2 >= most && table.Roles[i] == role)
                {
                    return i;
                }
            }
        }

        return roles.Length > 1 && most > 0 ? Array.IndexOf(counts, most) : null;
    }

    private static ImmutableArray<CsvDateOrder> OrdersOf(List<CsvRow> rows, int column, CsvDateOrder? known, LocalDate? today)
    {
        var readings = Enum.GetValues<CsvDateOrder>()
            .Select(order => (Order: order, Dates: rows.Select(row => CsvDate.Read(row[column], order)).OfType<LocalDate>().ToArray()))
            .Where(reading => reading.Dates.Length > 0 && reading.Dates.Length * 100 >= rows.Count * LeastReadable)
            .ToList();
        int most = readings.Count == 0 ? 0 : readings.Max(reading => reading.Dates.Length);
        readings.RemoveAll(reading => reading.Dates.Length < most);
        if (known is { } remembered && readings.Exists(reading => reading.Order == remembered))
        {
            return [remembered];
        }

        if (today is { } day && readings.Exists(reading => !IsAfter(reading.Dates, day)))
        {
            readings.RemoveAll(reading => IsAfter(reading.Dates, day));
        }

        // Banks list by date: where just some of the orders run one way they are right.
        if (readings.Exists(reading => RunsOneWay(reading.Dates)))
        {
            readings.RemoveAll(reading => !RunsOneWay(reading.Dates));
        }

        return
        [
            .. readings
                .Where((reading, i) => !readings.Take(i).Any(before => before.Dates.SequenceEqual(reading.Dates)))
                .Select(reading => reading.Order),
        ];
    }

    // A bank east of here may be a day ahead.
    private static bool IsAfter(LocalDate[] dates, LocalDate today) => dates.Max() > today.PlusDays(1);

    private static bool RunsOneWay(LocalDate[] dates)
    {
        bool up = true;
        bool down = true;
        for (int i = 1; i < dates.Length; i++)
        {
            up &= dates[i] >= dates[i - 1];
            down &= dates[i] <= dates[i - 1];
        }

        return up || down;
    }
}
