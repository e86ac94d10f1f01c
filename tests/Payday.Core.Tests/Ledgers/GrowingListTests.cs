using CsCheck;
using Payday.Core.Ledgers;

namespace Payday.Core.Tests.Ledgers;

public sealed class GrowingListTests
{
    [Fact]
    public void Add_TwiceToTheSameList_GivesTwoLists()
    {
        GrowingList<int> common = GrowingList<int>.Empty.Add(1, 2, 3).Add(4);

        GrowingList<int> left = common.Add(5);
        GrowingList<int> right = common.Add(6, 7);

        Assert.Equal([1, 2, 3, 4], common);
        Assert.Equal([1, 2, 3, 4, 5], left);
        Assert.Equal([1, 2, 3, 4, 6, 7], right);
    }

    [Fact]
    public void Item_BehindItsOwn_IsNotThere()
    {
        GrowingList<int> list = GrowingList<int>.Empty.Add(1, 2);
        list.Add(3);

        Assert.Throws<ArgumentOutOfRangeException>(() => list[2]);
        Assert.Throws<ArgumentOutOfRangeException>(() => list[-1]);
    }

    /// <summary>Every list that ever came of another stays what an array of the same items is.</summary>
    [Fact]
    public void Add_ToAnyListOfMany_LeavesAllOthersAsTheyWere() => Gen.Select(Gen.Int[0, 50], Gen.OneOf(Gen.Int.Array[0, 5], Gen.Int.Array[0, 1_500])).Array[1, 40].Sample(steps =>
    {
        List<(GrowingList<int> List, int[] Like)> made = [(GrowingList<int>.Empty, [])];
        foreach ((int from, int[] items) in steps)
        {
            (GrowingList<int> list, int[] like) = made[from % made.Count];
            made.Add((list.Add(items), [.. like, .. items]));
        }

        Assert.All(made, pair =>
        {
            Assert.Equal(pair.Like, pair.List);
            Assert.Equal(pair.Like, Enumerable.Range(0, pair.List.Count).Select(i => pair.List[i]));
        });
    });
}
