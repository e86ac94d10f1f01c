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

    /// <summary>Whatever a list begins with, is added to it or put in the place of an item: it is what an array of the same items is, and so are all it came from.</summary>
    [Fact]
    public void AnyOfMany_ThatBeginsWithAnother_IsAsAnArray() =>
        Gen.Select(Gen.Int[0, 700], Gen.Select(Gen.Int[0, 50], Gen.OneOf(Gen.Int[0, 5], Gen.Int[0, 1_200]), Gen.Int[0, 3_000]).Array[1, 20]).Sample((begun, steps) =>
        {
            object[] first = [.. Enumerable.Range(0, begun).Select(_ => new object())];
            List<(GrowingList<object> List, object[] Like)> made = [(GrowingList.After(first), first)];
            foreach ((int from, int count, int at) in steps)
            {
                (GrowingList<object> list, object[] like) = made[from % made.Count];
                object[] items = [.. Enumerable.Range(0, count).Select(_ => new object())];
                made.Add((list.Add(items), [.. like, .. items]));
                if (like.Length > 0)
                {
                    object[] changed = [.. like];
                    changed[at % like.Length] = new object();
                    made.Add((list.SetItem(at % like.Length, changed[at % like.Length]), changed));
                }
            }

            Assert.All(made, pair =>
            {
                Assert.True(pair.Like.SequenceEqual(pair.List));
                Assert.True(pair.Like.SequenceEqual(Enumerable.Range(0, pair.List.Count).Select(i => pair.List[i])));
                (GrowingList<object> list, object[] like) = made[^1];
                Assert.True(like.Where((item, i) => i >= pair.Like.Length || item != pair.Like[i]).SequenceEqual(list.OtherThanIn(pair.List)));
            });
        });

    [Theory]
    [InlineData(-1)]
    [InlineData(4)]
    public void SetItem_WhereNoneIs_Throws(int index) => Assert.Throws<ArgumentOutOfRangeException>(() => GrowingList.After([1, 2]).Add(3, 4).SetItem(index, 0));

    /// <summary>What both begin with is not looked at to tell them apart.</summary>
    [Fact]
    public void OtherThanIn_OfListsThatBeginTheSame_MakesNoneOfThat()
    {
        GrowingList<string> list = GrowingList.After(new MadeList<string>(3, at => at == 1 ? "1" : throw new InvalidOperationException()));

        Assert.Equal(["b", "a"], list.Add("a").SetItem(1, "b").OtherThanIn(list));
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
