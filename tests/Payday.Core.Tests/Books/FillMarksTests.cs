using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ids;

namespace Payday.Core.Tests.Books;

public sealed class FillMarksTests
{
    private static readonly LocalDate Friday = new(2026, 3, 6);

    private static readonly Gen<WalletFill> AnyFill = Gen.Select(
        Gen.Int[0, 2], Gen.Int[0, 1], Gen.Int[-1, 1], Gen.Bool, (pot, payday, week, isDone) => new WalletFill(
            new FillKey(Friday.PlusWeeks(2 * payday), week < 0 ? null : Friday.PlusWeeks((2 * payday) + week), new PotId($"p{pot}")),
            isDone ? FillState.Done : FillState.Skipped,
            Friday,
            Money.Zero(Currency.FromCode("USD")),
            null));

    /// <summary>Records that come of one another each say of a part what their own list of fills says of it.</summary>
    [Fact]
    public void MarksOf_RecordsMarkedOneAfterTheOther_SayWhatTheListSays() => Gen.Select(Gen.Int[0, 9], AnyFill.Array[0, 4], Gen.Int[0, 5]).Array[1, 12].Sample(steps =>
    {
        List<WeekRecords> made = [WeekRecords.None];
        foreach ((int from, WalletFill[] fills, int how) in steps)
        {
            WeekRecords weeks = made[from % made.Count];
            WalletFill[] once = [.. fills.DistinctBy(fill => fill.Key)];
            made.Add(how == 0 ? weeks with { Fills = [.. once] } : weeks.With(once));
            Assert.Equal(once, made[^1].Fills.TakeLast(once.Length));
        }

        foreach (WeekRecords weeks in made)
        {
            Assert.Equal(weeks.Fills.Length, weeks.Fills.DistinctBy(fill => fill.Key).Count());
            foreach (FillKey key in made.SelectMany(one => one.Fills).Select(fill => fill.Key))
            {
                Assert.Equal(weeks.Fills.SingleOrDefault(fill => fill.Key == key), weeks.MarksOf(key.PotId)[key.Payday, key.Week]);
            }
        }
    });
}
