using System.Collections.Immutable;

namespace Payday.Core.Cash;

/// <summary>Finds the pull that moves the fewest notes, by going through the values of both sides one at a time.</summary>
/// <remarks>
/// A state is what was handed over more than was got back, and what was pulled so far; of the ways to a state only one
/// with the fewest notes is kept. The number of notes moved is bounded, and the bound raised until there is a way, so
/// the first found is the best, and a wallet of coins does not multiply the states.
/// </remarks>
internal static class PullSearch
{
    /// <summary>The most notes a pull with a swap may move; nobody swaps more by hand.</summary>
    public const int MostMoved = 16;

    public static NotePull? Find(Notes from, Notes other, long amount)
    {
        // A note that is got may be pulled at once, and then counts twice. Without another side there is one state a sum, so no bound is needed.
        int all = from.Pieces + (2 * other.Pieces);
        int[] bounds = other.IsEmpty ? [all] : [.. new[] { 4, 8, MostMoved }.Select(bound => Math.Min(bound, all)).Distinct()];
        return bounds.Select(bound => Within(bound, from, other, amount)).FirstOrDefault(pull => pull is not null);
    }

    private static NotePull? Within(int bound, Notes from, Notes other, long amount)
    {
        bool swaps = !other.IsEmpty;
        Step[] values =
        [
            .. from.Reverse().Select(note => new Step(note.Key, note.Value, IsOther: false)),
            .. other.Reverse().Select(note => new Step(note.Key, note.Value, IsOther: true)),
        ];
        var layers = new List<Dictionary<State, Way>> { new() { [new State(0, 0)] = new Way(0, 0, 0, default) } };
        long otherWorth = other.Sum(note => note.Key * note.Value);
        foreach (Step step in values)
        {
            if (step.IsOther)
            {
                otherWorth -= step.Value * step.Count;
            }

            layers.Add(Next(layers[^1], step, bound, amount, otherWorth, swaps));
        }

        var goal = new State(0, amount);
        return layers[^1].ContainsKey(goal) ? Traced(layers, values, goal) : null;
    }

    // Each note of a value is handed over, pulled, both (got from the other side and pulled at once), or stays.
    private static Dictionary<State, Way> Next(Dictionary<State, Way> layer, Step step, int bound, long amount, long otherWorth, bool swaps)
    {
        var next = new Dictionary<State, Way>();
        foreach ((State state, Way way) in layer)
        {
            int most = Math.Min(step.Count, bound - way.Moved);
            for (int handed = 0; handed <= (swaps ? most : 0); handed++)
            {
                long balance = state.Balance + (step.IsOther ? -step.Value * handed : step.Value * handed);
                int pullable = step.IsOther ? handed : step.Count - handed;
                for (int pulled = 0; pulled <= pullable && way.Moved + handed + pulled <= bound; pulled++)
                {
                    var reached = new State(balance, state.Pulled + (step.Value * pulled));
                    if (reached.Pulled > amount || reached.Balance < 0 || reached.Balance > otherWorth)
                    {
                        break;
                    }

                    var here = new Way(way.Moved + handed + pulled, handed, pulled, state);
                    if (!next.TryGetValue(reached, out Way known) || here.Moved < known.Moved)
                    {
                        next[reached] = here;
                    }
                }
            }
        }

        return next;
    }

    private static NotePull Traced(List<Dictionary<State, Way>> layers, Step[] values, State state)
    {
        Dictionary<long, int> pulls = [];
        Dictionary<long, int> gives = [];
        Dictionary<long, int> gets = [];
        for (int i = values.Length; i > 0; i--)
        {
            Way way = layers[i][state];
            Dictionary<long, int> handed = values[i - 1].IsOther ? gets : gives;
            handed[values[i - 1].Value] = way.Handed;
            pulls[values[i - 1].Value] = pulls.GetValueOrDefault(values[i - 1].Value) + way.Pulled;
            state = way.From;
        }

        return new NotePull(Bag(pulls), Bag(gives), Bag(gets));
    }

    private static Notes Bag(Dictionary<long, int> notes) => Notes.Of(notes.Where(note => note.Value > 0));

    private readonly record struct Step(long Value, int Count, bool IsOther);

    private readonly record struct State(long Balance, long Pulled);

    private readonly record struct Way(int Moved, int Handed, int Pulled, State From);
}
