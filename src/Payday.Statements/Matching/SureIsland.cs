namespace Payday.Statements.Matching;

/// <summary>The best assignment of an island, and by how much each of its pairs is sure.</summary>
/// <remarks>
/// A pair's margin is what the best assignment has above the best one in which the left isn't with that right nor with one just like
/// it. Lefts that are alike and alone may take its place, for which of them it is makes no difference. In large islands, where
/// the same amount comes day after day, only the nearest lefts may change for it and the others keep their rights.
/// </remarks>
internal sealed class SureIsland
{
    private const int MostExact = 40;
    private const int Near = 12;

    private readonly PairIsland island;
    private readonly int[] leftClass;
    private readonly int[] rightClass;
    private readonly int[] leftOf;
    private readonly bool isSmall;

    /// <summary>Assigns an island.</summary>
    /// <param name="island">The island.</param>
    /// <param name="leftClass">For each of its lefts the number of its kind: those of one kind can't be told apart.</param>
    /// <param name="rightClass">The same for its rights.</param>
    public SureIsland(PairIsland island, int[] leftClass, int[] rightClass)
    {
        this.island = island;
        this.leftClass = leftClass;
        this.rightClass = rightClass;
        RightOf = Assignment.Best(island.Lefts.Count, island.Rights.Count, island.Pairs);
        isSmall = island.Lefts.Count <= MostExact;
        leftOf = new int[island.Rights.Count];
        Array.Fill(leftOf, -1);
        for (int i = 0; i < RightOf.Length; i++)
        {
            if (RightOf[i] >= 0)
            {
                leftOf[RightOf[i]] = i;
            }
        }
    }

    /// <summary>The right of each left, -1 for none.</summary>
    public int[] RightOf { get; }

    /// <summary>The margin of a left that has a right.</summary>
    public int Margin(int left)
    {
        int right = RightOf[left];
        int first = isSmall ? 0 : left - Near;
        int last = isSmall ? int.MaxValue : left + Near;
        bool IsNear(int other) => other >= first && other <= last;
        bool IsAlike(int other) => other == left || (leftClass[other] == leftClass[left] && RightOf[other] < 0);
        bool IsFree(Pair pair) => IsNear(pair.Left) && (leftOf[pair.Right] < 0 || IsNear(leftOf[pair.Right]));
        List<Pair> near = isSmall ? island.Pairs : island.Pairs.FindAll(IsFree);
        List<Pair> others = near.FindAll(pair => !(IsAlike(pair.Left) && rightClass[pair.Right] == rightClass[right]));
        return (int)(Points(RightOf, near) - Points(Assignment.Best(island.Lefts.Count, island.Rights.Count, others), others));
    }

    private static long Points(int[] rightOf, List<Pair> pairs)
    {
        long points = 0;
        foreach (Pair pair in pairs)
        {
            points += rightOf[pair.Left] == pair.Right ? pair.Points : 0;
        }

        return points;
    }
}
