using System.Globalization;
using CsCheck;
using Payday.Store.Backups;

namespace Payday.Store.Tests.Backups;

public sealed class BackupLadderTests
{
    // Days as month and day of a year, a backup each, in the order made; those that may go.
    [Theory]
    [InlineData("", "")]
    [InlineData("2026-03-01 2026-03-02 2026-03-03 2026-03-04 2026-03-05 2026-03-06 2026-03-07 2026-03-08", "")]
    [InlineData("2026-03-01 2026-03-02 2026-03-03 2026-03-04 2026-03-05 2026-03-06 2026-03-07 2026-03-08 2026-03-09", "2026-03-01")]
    [InlineData("2026-02-27 2026-02-28 2026-03-01 2026-03-02 2026-03-03 2026-03-04 2026-03-05 2026-03-06 2026-03-07 2026-03-08", "2026-02-27")]
    [InlineData("2024-05-01 2024-11-30 2025-06-01 2026-03-01 2026-03-02 2026-03-03 2026-03-04 2026-03-05 2026-03-06 2026-03-07 2026-03-08", "")]
    public void Beyond_DaysOfBackups_NamesThoseThatMayGo(string made, string gone)
    {
        BackupFile[] backups = [.. Days(made).Select((day, i) => Backup(day, i + 1))];

        Assert.Equal(Days(gone), BackupLadder.Beyond(backups).Select(file => file.Made).Order());
    }

    [Fact]
    public void Beyond_FourteenMonths_KeepsTheTwelveNewestAndOneOfTheYearBefore()
    {
        // Two a month, from January 2025 to February 2026: the older of each pair goes, and January and February
        // 2025 are beyond the twelve months, with December 2025 as the one that stays of that year.
        BackupFile[] backups = [.. Enumerable.Range(0, 28).Select(i => Backup(new DateTime(2025, 1, 5 + (i % 2 * 10), 0, 0, 0, DateTimeKind.Utc).AddMonths(i / 2), i + 1))];

        string[] kept = [.. Kept(backups).Select(file => file.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))];

        Assert.Equal(
            ["2026-02-15", "2026-02-05", "2026-01-15", "2026-01-05", "2025-12-15", "2025-12-05", "2025-11-15", "2025-11-05", "2025-10-15", "2025-09-15", "2025-08-15", "2025-07-15", "2025-06-15", "2025-05-15", "2025-04-15", "2025-03-15"],
            kept);
    }

    [Fact]
    public void Beyond_ClockSetBack_KeepsTheOneThatGoesFurthest()
    {
        // The clock went back by a month, into days that have newer backups by their names.
        BackupFile[] before = [.. Enumerable.Range(1, 9).Select(day => Backup(new DateTime(2026, 3, day, 0, 0, 0, DateTimeKind.Utc), day))];
        BackupFile late = Backup(new DateTime(2026, 2, 1, 0, 0, 0, DateTimeKind.Utc), 11);
        BackupFile other = Backup(new DateTime(2026, 2, 2, 0, 0, 0, DateTimeKind.Utc), 10);

        Assert.Equal([before[0]], BackupLadder.Beyond([.. before, other, late]));
    }

    [Fact]
    public void Beyond_AnyBackups_KeepsWhatItPromises() => Backups.Sample(backups =>
    {
        HashSet<BackupFile> kept = [.. Kept(backups)];
        BackupFile[] newestFirst = NewestFirst(backups);

        Assert.All(newestFirst.Take(8), file => Assert.Contains(file, kept));
        (int, int)[] months = [.. newestFirst.Select(Month).Distinct().Take(12)];
        Assert.All(months, month => Assert.Contains(kept, file => Month(file) == month));
        Assert.All(backups.Select(file => file.Made.Year), year => Assert.Contains(kept, file => file.Made.Year == year));
        Assert.True(backups.Length == 0 || kept.Contains(backups.MaxBy(file => file.Number)!));

        // No more than it promises, so that a folder doesn't fill up.
        Assert.InRange(kept.Count, 0, 8 + 12 + backups.Select(file => file.Made.Year).Distinct().Count() + 1);
    });

    [Fact]
    public void Beyond_OnceMore_NamesNone() => Backups.Sample(backups => Assert.Empty(BackupLadder.Beyond(Kept(backups))));

    [Fact]
    public void Beyond_DroppedAfterEachBackup_KeepsWhatDroppingOnceDoes() => Backups.Sample(backups =>
    {
        // A clock that never goes back: then what an earlier dropping took would have gone later too.
        BackupFile[] inOrder = [.. NewestFirst(backups).Reverse().Select((file, i) => Backup(file.Made, i + 1))];
        List<BackupFile> each = [];
        foreach (BackupFile file in inOrder)
        {
            each.Add(file);
            each = [.. Kept([.. each])];
        }

        Assert.Equal(Kept(inOrder).OrderBy(file => file.Number), each.OrderBy(file => file.Number));
    });

    // Up to 60 backups over five years, many in the same month, numbers in no order of time: clocks go wrong.
    private static Gen<BackupFile[]> Backups => Gen.Select(Gen.Int[0, 5 * 365], Gen.Int[0, 3]).Array[0, 60].Select(
        Gen.Int[1, int.MaxValue],
        (days, shuffle) =>
        {
            int[] numbers = [.. Enumerable.Range(1, days.Length)];
            new Random(shuffle).Shuffle(numbers);
            return days.Select((day, i) => Backup(new DateTime(2021, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddDays(day.Item1).AddHours(day.Item2), numbers[i])).ToArray();
        });

    private static BackupFile Backup(DateTime made, long number) => BackupFile.In("", made, number, "0123ab", isHandMade: false);

    private static BackupFile[] NewestFirst(BackupFile[] backups) => [.. backups.OrderByDescending(file => file.Made).ThenByDescending(file => file.Number)];

    private static BackupFile[] Kept(BackupFile[] backups) => NewestFirst([.. backups.Except(BackupLadder.Beyond(backups))]);

    private static (int Year, int Month) Month(BackupFile file) => (file.Made.Year, file.Made.Month);

    private static DateTime[] Days(string days) => [.. days.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(day =>
        DateTime.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal))];
}
