using System.Collections.Immutable;
using CsCheck;
using Payday.Core.Cash;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Cash;

public class NotePullTests
{
    private static readonly Gen<Notes> FewNotes =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2])
            .Select((fifties, twenties, tens, fives) => Bag((50, fifties), (20, twenties), (10, tens), (5, fives)));

    [Fact]
    public void Exactly_FewestNotes_NotGreedy() =>
        Assert.Equal(Bag((20, 3)), NotePull.Exactly(Bag((50, 1), (20, 3), (5, 2)), 60)!.Pulls);

    [Fact]
    public void Exactly_NoWay_IsNull() => Assert.Null(NotePull.Exactly(Bag((20, 2)), 15));

    [Fact]
    public void WithSwap_ChangesATwenty()
    {
        NotePull pull = NotePull.WithSwap(Bag((20, 2)), Bag((5, 4)), 15)!;
        Assert.Equal(Bag((5, 3)), pull.Pulls);
        Assert.Equal(Bag((20, 1)), pull.Gives);
        Assert.Equal(Bag((5, 4)), pull.Gets);
    }

    // Every way to hand over, get and pull, tried one by one.
    [Fact]
    public void WithSwap_SmallCases_AgreesWithBruteForce() =>
        Gen.Select(FewNotes, FewNotes, Gen.Int[0, 20]).Sample(
            (own, other, fives) =>
            {
                int? best = Fewest(own, other, fives * 5);
                NotePull? found = NotePull.WithSwap(own, other, fives * 5);
                bool direct = NotePull.Exactly(own, fives * 5) is not null;
                Assert.Equal(direct || best is not null, found is not null);
                if (found is null)
                {
                    return;
                }

                Assert.Equal(fives * 5, Worth(found.Pulls));
                Assert.Equal(Worth(found.Gives), Worth(found.Gets));
                Assert.True(own.Covers(found.Gives) && other.Covers(found.Gets));
                Assert.True(own.Less(found.Gives).Plus(found.Gets).Covers(found.Pulls));
                Assert.Equal(direct ? Subsets(own).Where(pull => Worth(pull) == fives * 5).Min(pull => pull.Pieces) : best, found.Moved);
            },
            iter: 150,
            threads: 1);

    private static int? Fewest(Notes own, Notes other, long amount)
    {
        ILookup<long, Notes> gets = Subsets(other).ToLookup(Worth);
        int? best = null;
        foreach (Notes give in Subsets(own))
        {
            foreach (Notes get in gets[Worth(give)])
            {
                Notes there = own.Less(give).Plus(get);
                int moved = give.Pieces + get.Pieces;
                if (NotePull.Exactly(there, amount) is { } pull && (best is null || moved + pull.Moved < best))
                {
                    best = moved + pull.Moved;
                }
            }
        }

        return best;
    }

    private static IEnumerable<Notes> Subsets(Notes notes) =>
        notes.Aggregate(
            (IEnumerable<Notes>)[Core.Cash.Notes.None],
            (sets, note) => sets.SelectMany(set => Enumerable.Range(0, note.Value + 1).Select(count => count == 0 ? set : set.With(note.Key, count))));

    private static long Worth(Notes notes) => notes.Sum(note => note.Key * note.Value);

    private static Notes Bag(params (long Value, int Count)[] notes) =>
        Core.Cash.Notes.Of(notes.Where(note => note.Count > 0));
}
