namespace Payday.Statements.Matching;

/// <summary>The assignment with the most points: each left and right used at most once, any left alone.</summary>
/// <remarks>
/// Shortest augmenting paths with potentials (Jonker and Volgenant 1987; rectangular as Crouse 2016), over the pairs there are.
/// Whole numbers, so it is exact. A pair's cost is what it lacks to the best pair; being left alone costs all of that, through a
/// place of its own that each left has. Of several best assignments the one found first is kept: lefts in order, rights in order.
/// </remarks>
internal static class Assignment
{
    private const int None = -1;

    /// <summary>The right of each left, -1 for none.</summary>
    /// <param name="lefts">How many lefts there are.</param>
    /// <param name="rights">How many rights there are.</param>
    /// <param name="pairs">The possible pairs.</param>
    public static int[] Best(int lefts, int rights, IReadOnlyList<Pair> pairs)
    {
        int most = 0;
        var edges = new List<Pair>[lefts];
        for (int i = 0; i < lefts; i++)
        {
            edges[i] = [];
        }

        foreach (Pair pair in pairs)
        {
            most = Math.Max(most, pair.Points);
            edges[pair.Left].Add(pair);
        }

        // Behind the rights stands a place for each left to be alone in.
        for (int i = 0; i < lefts; i++)
        {
            edges[i].Add(new Pair(i, rights + i, 0));
        }

        var search = new Search(edges, lefts, rights + lefts, most);
        for (int i = 0; i < lefts; i++)
        {
            search.Augment(i);
        }

        return [.. search.RightOf.Select(right => right >= rights ? None : right)];
    }

    private sealed class Search
    {
        private readonly List<Pair>[] edges;
        private readonly int most;
        private readonly int[] leftOf;
        private readonly long[] leftPrice;
        private readonly long[] rightPrice;
        private readonly long[] distance;
        private readonly int[] before;
        private readonly bool[] isDone;

        public Search(List<Pair>[] edges, int lefts, int rights, int most)
        {
            this.edges = edges;
            this.most = most;
            RightOf = Filled(lefts);
            leftOf = Filled(rights);
            leftPrice = new long[lefts];
            rightPrice = new long[rights];
            distance = new long[rights];
            before = new int[rights];
            isDone = new bool[rights];
            Array.Fill(distance, long.MaxValue);
        }

        public int[] RightOf { get; }

        // Dijkstra over reduced costs from a left to the nearest free right; then the path is turned round.
        public void Augment(int start)
        {
            var queue = new PriorityQueue<int, (long, int)>();
            var touched = new List<int>();
            var done = new List<int>();
            int left = start;
            long reached = 0;
            int end;
            while (true)
            {
                foreach (Pair edge in edges[left])
                {
                    long through = reached + most - edge.Points - leftPrice[left] - rightPrice[edge.Right];
                    if (!isDone[edge.Right] && through < distance[edge.Right])
                    {
                        if (distance[edge.Right] == long.MaxValue)
                        {
                            touched.Add(edge.Right);
                        }

                        distance[edge.Right] = through;
                        before[edge.Right] = left;
                        queue.Enqueue(edge.Right, (through, edge.Right));
                    }
                }

                int right = queue.Dequeue();
                while (isDone[right])
                {
                    right = queue.Dequeue();
                }

                isDone[right] = true;
                done.Add(right);
                reached = distance[right];
                if (leftOf[right] == None)
                {
                    end = right;
                    break;
                }

                left = leftOf[right];
            }

            leftPrice[start] += reached;
            foreach (int right in done.Where(right => leftOf[right] != None))
            {
                leftPrice[leftOf[right]] += reached - distance[right];
                rightPrice[right] -= reached - distance[right];
            }

            Turn(start, end);
            foreach (int right in touched)
            {
                distance[right] = long.MaxValue;
                isDone[right] = false;
            }
        }

        private void Turn(int start, int end)
        {
            int right = end;
            while (true)
            {
                int left = before[right];
                int next = RightOf[left];
                leftOf[right] = left;
                RightOf[left] = right;
                if (left == start)
                {
                    return;
                }

                right = next;
            }
        }

        private static int[] Filled(int length)
        {
            int[] filled = new int[length];
            Array.Fill(filled, None);
            return filled;
        }
    }
}
