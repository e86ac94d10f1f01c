namespace Payday.Statements.Matching;

/// <summary>Pairs that share lefts and rights with one another and with no other pairs: each such island is assigned by itself.</summary>
/// <param name="Lefts">Its lefts, in order.</param>
/// <param name="Rights">Its rights, in order.</param>
/// <param name="Pairs">Its pairs; left and right are places in the two lists.</param>
internal sealed record PairIsland(List<int> Lefts, List<int> Rights, List<Pair> Pairs)
{
    /// <summary>The islands of pairs, in the order of their first lefts.</summary>
    public static List<PairIsland> Of(int lefts, int rights, IReadOnlyList<Pair> pairs)
    {
        int[] root = [.. Enumerable.Range(0, lefts + rights)];
        foreach (Pair pair in pairs)
        {
            root[Find(root, lefts + pair.Right)] = Find(root, pair.Left);
        }

        var islands = new Dictionary<int, PairIsland>();
        var place = new int[lefts + rights];
        Array.Fill(place, -1);
        foreach (Pair pair in pairs.OrderBy(pair => pair.Left).ThenBy(pair => pair.Right))
        {
            int at = Find(root, pair.Left);
            if (!islands.TryGetValue(at, out PairIsland? island))
            {
                islands[at] = island = new PairIsland([], [], []);
            }

            island.Pairs.Add(new Pair(Place(place, pair.Left, island.Lefts, pair.Left), Place(place, lefts + pair.Right, island.Rights, pair.Right), pair.Points));
        }

        return [.. islands.Values];
    }

    private static int Place(int[] place, int node, List<int> members, int member)
    {
        if (place[node] < 0)
        {
            place[node] = members.Count;
            members.Add(member);
        }

        return place[node];
    }

    private static int Find(int[] root, int node)
    {
        while (root[node] != node)
        {
            root[node] = root[root[node]];
            node = root[node];
        }

        return node;
    }
}
