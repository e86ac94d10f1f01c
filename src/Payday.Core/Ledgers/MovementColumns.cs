using System.Runtime.InteropServices;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>The movements of a ledger as columns of plain numbers, of which a movement is made when it is looked at.</summary>
/// <remarks>
/// A movement takes a quarter of the memory so, and what all of them come to (<see cref="Balances"/>, the movements of an end)
/// is reckoned from the numbers. They are filled once, in the order of the ledger, and never changed.
/// </remarks>
/// <param name="currency">The currency of all of them.</param>
/// <param name="capacity">How many there will be.</param>
/// <param name="reasons">The reasons by the numbers that are given for them.</param>
public sealed class MovementColumns(Currency currency, int capacity, IReadOnlyList<string> reasons)
{
    private const int NoPayday = -1;

    private readonly LocalDate[] dates = new LocalDate[capacity];
    private readonly int[] from = new int[capacity];
    private readonly int[] to = new int[capacity];
    private readonly long[] minorUnits = new long[capacity];
    private readonly int[] reasonOf = new int[capacity];

    // By its place among the paydays, of which there are few.
    private readonly int[] paydayOf = new int[capacity];
    private readonly List<LocalDate> paydays = [];

    private readonly List<LedgerEnd> ends = [];
    private readonly Dictionary<LedgerEnd, int> numbers = [];
    private readonly Dictionary<int, long> reverses = [];

    /// <summary>How many movements there are so far.</summary>
    public int Count { get; private set; }

    /// <summary>The currency of all of them.</summary>
    public Currency Currency => currency;

    /// <summary>The ends that they have, by their numbers.</summary>
    public IReadOnlyList<LedgerEnd> Ends => ends;

    /// <summary>What undoes another: the number of each such movement, and of the one that it undoes.</summary>
    public IEnumerable<(long Number, long Undone)> Reverses => reverses.Select(pair => (pair.Key + 1L, pair.Value));

    /// <summary>The number that stands for an end.</summary>
    public int NumberOf(LedgerEnd end)
    {
        ref int number = ref CollectionsMarshal.GetValueRefOrAddDefault(numbers, end, out bool known);
        if (!known)
        {
            number = ends.Count;
            ends.Add(end);
        }

        return number;
    }

    /// <summary>Adds the next movement; its number is one more than that of the last.</summary>
    /// <param name="date">Its day.</param>
    /// <param name="ends">The numbers of the ends that it goes from and to.</param>
    /// <param name="amount">Its amount in minor units, above zero.</param>
    /// <param name="reason">The number of its reason.</param>
    /// <param name="payday">The payday it belongs to, or null.</param>
    /// <param name="undone">The number of the movement that it undoes, or null.</param>
    /// <exception cref="ArgumentException">It moves nothing.</exception>
    public void Add(LocalDate date, (int From, int To) ends, long amount, int reason, LocalDate? payday, long? undone)
    {
        if (amount <= 0 || ends.From == ends.To)
        {
            throw new ArgumentException($"A movement of {amount} from {this.ends[ends.From].Key} to {this.ends[ends.To].Key} moves nothing.", nameof(amount));
        }

        dates[Count] = date;
        (from[Count], to[Count]) = ends;
        minorUnits[Count] = amount;
        reasonOf[Count] = reason;
        paydayOf[Count] = payday is { } of ? Place(of) : NoPayday;
        if (undone is { } number)
        {
            reverses.Add(Count, number);
        }

        Count++;
    }

    /// <summary>The movement at an index, made anew each time.</summary>
    public Movement Make(int index) => new(
        index + 1,
        dates[index],
        ends[from[index]],
        ends[to[index]],
        Money.FromMinorUnits(minorUnits[index], currency),
        reasons[reasonOf[index]],
        paydayOf[index] is >= 0 and var at ? paydays[at] : null,
        reverses.TryGetValue(index, out long undone) ? undone : null);

    /// <summary>What the movement at an index moved, without making it.</summary>
    public MovedAmount Moved(int index) => new(index + 1, dates[index], ends[from[index]], ends[to[index]], Money.FromMinorUnits(minorUnits[index], currency));

    /// <summary>Whether the movement at an index undoes another.</summary>
    public bool IsReverse(int index) => reverses.ContainsKey(index);

    /// <summary>What each end holds by all of them, in minor units, by its number.</summary>
    /// <exception cref="OverflowException">It leaves the range of 64 bits.</exception>
    public long[] Sums()
    {
        long[] sums = new long[ends.Count];
        for (int i = 0; i < Count; i++)
        {
            checked
            {
                sums[from[i]] -= minorUnits[i];
                sums[to[i]] += minorUnits[i];
            }
        }

        return sums;
    }

    /// <summary>The indexes of the movements of each end, in order, those of one end behind those of the one before it.</summary>
    /// <param name="leftOut">The numbers of those that are none of any end's: what was undone, and what undid it.</param>
    /// <returns>The indexes; and where those of each end begin, with one more for where the last ones stop.</returns>
    public (int[] Indexes, int[] Begins) ByEnd(HashSet<long> leftOut)
    {
        int[] begins = new int[ends.Count + 1];
        for (int i = 0; i < Count; i++)
        {
            if (!leftOut.Contains(i + 1))
            {
                begins[from[i] + 1]++;
                begins[to[i] + 1]++;
            }
        }

        for (int i = 1; i < begins.Length; i++)
        {
            begins[i] += begins[i - 1];
        }

        int[] next = begins[..^1];
        int[] indexes = new int[begins[^1]];
        for (int i = 0; i < Count; i++)
        {
            if (!leftOut.Contains(i + 1))
            {
                indexes[next[from[i]]++] = i;
                indexes[next[to[i]]++] = i;
            }
        }

        return (indexes, begins);
    }

    /// <summary>By how much, in minor units, movements changed what an end holds, and when.</summary>
    /// <param name="end">The number of the end.</param>
    /// <param name="indexes">The indexes of movements of that end.</param>
    public IEnumerable<(LocalDate Day, long By)> Changes(int end, IEnumerable<int> indexes) =>
        indexes.Select(i => (dates[i], to[i] == end ? minorUnits[i] : -minorUnits[i]));

    // Those of one payday come together.
    private int Place(LocalDate payday)
    {
        if (paydays.Count == 0 || paydays[^1] != payday)
        {
            paydays.Add(payday);
        }

        return paydays.Count - 1;
    }
}
