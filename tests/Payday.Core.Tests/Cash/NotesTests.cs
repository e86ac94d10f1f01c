using CsCheck;
using Payday.Core.Cash;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Cash;

public class NotesTests
{
    private static readonly Gen<Notes> Some =
        Gen.Select(Gen.OneOf(500L, 1000L, 2000L, 5000L), Gen.Int[0, 6]).Array[0, 6].Select(counts => Notes.Of(counts));

    [Fact]
    public void Of_CountsOfOneValue_AddUp() => Assert.Equal("3x500 1x2000", Notes.Of([(2000, 1), (500, 1), (500, 2)]).ToString());

    [Fact]
    public void Of_ASpan_IsTheSameAsAListAndKeepsNoneOfIt()
    {
        KeyValuePair<long, int>[] notes = [new(2000, 1), new(500, 1), new(500, 2)];
        var heap = Notes.Of(notes.AsSpan());
        notes[0] = new(100, 9);

        Assert.Equal("3x500 1x2000", heap.ToString());
        Assert.Throws<ArgumentException>(() => Notes.Of([new KeyValuePair<long, int>(500, -1)]));
    }

    [Fact]
    public void Of_BelowZero_IsRefused() => Assert.Throws<ArgumentException>(() => Notes.Of(500, -1));

    [Fact]
    public void Worth_AndPieces_CountAll()
    {
        var notes = Notes.Of([(2000, 3), (500, 2)]);

        Assert.Equal((Usd(70), 5, 3, 0), (notes.Worth(Dollars), notes.Pieces, notes[2000], notes[1000]));
        Assert.False(notes.IsEmpty);
        Assert.True(Notes.None.IsEmpty);
    }

    // What was stored is given back as it was, with its counts of zero; but they make no heap another one.
    [Fact]
    public void Equals_ACountOfZero_SaysNothing()
    {
        var written = Notes.Of([(500, 0), (2000, 1)]);
        var bare = Notes.Of(2000, 1);

        Assert.Equal(bare, written);
        Assert.Equal(bare.GetHashCode(), written.GetHashCode());
        Assert.Equal([500L, 2000L], written.Values);
        Assert.True(Notes.Of(500, 0).IsEmpty);
        Assert.True(bare.Covers(written));
    }

    [Fact]
    public void Equals_OtherPieces_IsFalse()
    {
        Assert.NotEqual(Notes.Of(500, 4), Notes.Of(500, 3));
        Assert.True(Notes.Of(2000, 1) != Notes.Of(500, 4));
        Assert.False(Notes.None == null);
    }

    [Fact]
    public void With_AnotherCount_TakesItsPlace()
    {
        var notes = Notes.Of([(500, 1), (2000, 1)]);

        Assert.Equal(Notes.Of([(500, 4), (2000, 1)]), notes.With(500, 4));
        Assert.Equal([2000L], notes.With(500, 0).Values);
        Assert.Equal(Notes.Of([(500, 1), (1000, 2), (2000, 1)]), notes.With(1000, 2));
    }

    [Fact]
    public void Less_MoreThanThere_TakesWhatIsThere() =>
        Assert.Equal(Notes.Of(2000, 1), Notes.Of([(500, 1), (2000, 3)]).Less(Notes.Of([(500, 9), (1000, 1), (2000, 2)])));

    [Fact]
    public void Plus_ThenLess_IsWhatWasThere() =>
        Gen.Select(Some, Some).Sample((some, more) => Assert.Equal(some, some.Plus(more).Less(more)));

    [Fact]
    public void Plus_AnyOrder_IsTheSame() => Gen.Select(Some, Some, Some).Sample((one, two, three) =>
    {
        Assert.Equal(one.Plus(two), two.Plus(one));
        Assert.Equal(one.Plus(two).Plus(three), Notes.Sum([three, one, two]));
        Assert.Equal(one.Worth(Dollars) + two.Worth(Dollars), one.Plus(two).Worth(Dollars));
        Assert.Equal(one.Pieces + two.Pieces, one.Plus(two).Pieces);
    });

    [Fact]
    public void Common_AndWhatIsLeft_MakeTheWhole() => Gen.Select(Some, Some).Sample((some, other) =>
    {
        Notes common = some.Common(other);

        Assert.Equal(common, other.Common(some));
        Assert.Equal(some, common.Plus(some.Less(other)));
        Assert.True(some.Covers(common) && other.Covers(common));
    });

    [Fact]
    public void Covers_AnyTwo_IsThatNothingLacks() => Gen.Select(Some, Some).Sample((all, some) =>
    {
        Assert.Equal(some.Less(all).IsEmpty, all.Covers(some));
        Assert.True(all.Plus(some).Covers(some));
    });

    [Fact]
    public void Times_AnyNumber_IsSoManyHeaps() => Gen.Select(Some, Gen.Int[0, 5]).Sample((heap, times) =>
    {
        Assert.Equal(Notes.Sum(Enumerable.Repeat(heap, times)), heap.Times(times));
        Assert.Equal(heap.Worth(Dollars) * times, heap.Times(times).Worth(Dollars));
    });

    [Fact]
    public void Only_SomeValues_LeavesTheOthersOut() => Gen.Select(Some, Gen.Long[0, 6000]).Sample((heap, most) =>
    {
        Notes small = heap.Only(value => value <= most);

        Assert.All(small.Values, value => Assert.True(value <= most));
        Assert.Equal(heap, small.Plus(heap.Only(value => value > most)));
    });

    [Fact]
    public void Equals_AnyTwo_IsOfTheirCounts() => Gen.Select(Some, Some).Sample((one, two) =>
    {
        bool same = one.Values.Concat(two.Values).All(value => one[value] == two[value]);

        Assert.Equal(same, one == two);
        Assert.True(!same || one.GetHashCode() == two.GetHashCode());
    });
}
