using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>The filling sheet with a row for each pot and a group of columns for each week.</summary>
/// <param name="Groups">The weeks, the earliest first; what isn't filled week by week before them.</param>
/// <param name="Rows">The pots, in the order of filling.</param>
internal sealed record FillingMatrix(ImmutableArray<FillingGroup> Groups, ImmutableArray<FillingMatrixRow> Rows)
{
    /// <summary>The same notes as those of a sheet.</summary>
    public static FillingMatrix Of(FillingSheetData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        FillingRow[] filled = [.. data.Rows.Where(row => row.Notes.Any(line => line.Count > 0))];
        LocalDate?[] weeks = [.. filled.Select(row => row.Week).Distinct().Order()];
        return new FillingMatrix(
            [.. weeks.Select(week => new FillingGroup(week, NoteCounts.ByValue(filled.Where(row => row.Week == week).SelectMany(row => row.Notes))))],
            [
                .. filled.GroupBy(row => row.Pot, StringComparer.Ordinal).Select(pot => new FillingMatrixRow(
                    pot.Key,
                    [.. weeks.Select(week => NoteCounts.ByValue(pot.Where(row => row.Week == week).SelectMany(row => row.Notes)))])),
            ]);
    }
}

/// <summary>What is filled on one day.</summary>
/// <param name="Week">The fill day, or null for what isn't split into weeks.</param>
/// <param name="Notes">All notes of it by value, largest first.</param>
internal sealed record FillingGroup(LocalDate? Week, ImmutableArray<NoteLine> Notes);

/// <summary>What a pot gets.</summary>
/// <param name="Pot">Its name.</param>
/// <param name="Groups">The notes for each group, in their order; none where it gets nothing then.</param>
internal sealed record FillingMatrixRow(string Pot, ImmutableArray<ImmutableArray<NoteLine>> Groups)
{
    /// <summary>All notes of the pot.</summary>
    public IEnumerable<NoteLine> Notes => Groups.SelectMany(group => group);
}
