using System.Collections.Immutable;
using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Cash;

public class MachineTripsTests
{
    [Fact]
    public void Of_NothingToFetch_IsNoTrip() => Assert.Empty(MachineTrips.Of(Core.Cash.Notes.None, Usd(100)));

    [Fact]
    public void Of_NoLimit_IsOneTrip() => Assert.Equal([Notes((20, 50))], MachineTrips.Of(Notes((20, 50)), null));

    [Theory]
    [InlineData(750, "500 250")]
    [InlineData(500, "500")]
    [InlineData(510, "500 10")]
    public void Of_ALimit_FillsTheFirstTripsUp(int sum, string trips) => Assert.Equal(
        trips, string.Join(' ', MachineTrips.Of(Notes((20, sum / 20), (10, sum % 20 / 10)), Usd(500)).Select(trip => trip.Worth(Dollars).MinorUnits / 100)));

    // A note that is above the limit can't be fetched under it; it is not lost from the slip.
    [Fact]
    public void Of_ANoteAboveTheLimit_IsATripOfItsOwn() =>
        Assert.Equal([Notes((20, 1)), Notes((50, 1))], MachineTrips.Of(Notes((50, 1), (20, 1)), Usd(40)));

    [Fact]
    public void Of_AnyNotes_AddUpAndKeepTheLimit() =>
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[5, 60]).Sample((fifties, twenties, tens, limit) =>
        {
            Notes all = Notes((50, fifties), (20, twenties), (10, tens));
            ImmutableArray<Notes> trips = MachineTrips.Of(all, Usd(limit * 10));
            Assert.Equal(all, Core.Cash.Notes.Sum(trips));
            Assert.All(trips, trip => Assert.True(trip.Worth(Dollars) <= Usd(limit * 10)));

            // Less than one largest note is left out of each trip but the last, as long as there are smaller notes to fill it with.
            Assert.All(trips.SkipLast(1), trip => Assert.True(trip.Worth(Dollars) > Usd((limit * 10) - 50)));
        });
}
