using System.Collections.Immutable;

namespace Payday.Store.Backups;

/// <summary>Which backups are kept: many that are young, few that are old.</summary>
public static class BackupLadder
{
    private const int Newest = 8;
    private const int Months = 12;

    /// <summary>The backups that may go: all but the eight newest, the newest of each of the last twelve months that have one, and the newest of each year.</summary>
    public static ImmutableArray<BackupFile> Beyond(IEnumerable<BackupFile> backups)
    {
        ArgumentNullException.ThrowIfNull(backups);
        BackupFile[] all = [.. backups.OrderByDescending(file => file.Made).ThenByDescending(file => file.Number)];
        HashSet<BackupFile> kept =
        [
            .. all.Take(Newest),
            .. all.GroupBy(file => (file.Made.Year, file.Made.Month)).Take(Months).Select(month => month.First()),
            .. all.GroupBy(file => file.Made.Year).Select(year => year.First()),
        ];

        // The one that goes furthest stays whatever the clock said when it was made.
        return [.. all.Where(file => !kept.Contains(file) && file.Number < all.Max(one => one.Number))];
    }
}
