using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Note requests from a seed: the same seed gives the same request on every machine.</summary>
internal static class RandomRequests
{
    private static readonly long[][] Systems =
    [
        [1, 2, 5, 10, 20, 50, 100],
        [5, 10, 20, 50, 100, 200, 500],
        [5, 10, 20, 50],
        [20, 50, 100],
        [20, 50],
        [10, 20, 50, 100, 200, 500],
        [1, 5, 10, 20, 50, 100],
        [1, 2, 5],
        [2, 5],
        [5, 20, 50],
        [1, 3, 4],
        [7, 10, 25],
        [1, 10, 25],
        [1, 5, 10, 20, 25],
        [1, 5, 18, 25],
        [2, 6, 15],
        [4, 6, 9],
        [20],
    ];

    /// <summary>A request with few parts, each of its own pot, and all sorts of wishes.</summary>
    public static NoteRequest Small(int seed)
    {
        Random random = new(seed);
        long[] system = Systems[random.Next(Systems.Length)];
        ImmutableArray<NotePart> parts =
        [
            .. Enumerable.Range(0, random.Next(1, 6)).Select(i => Part(
                $"p{i}",
                random.Next(0, (int)Math.Min(160, 6 * system[^1])),
                random.Next(3) == 0 ? Any(random, system) : null,
                random.Next(3) == 0 ? (Any(random, system), random.Next(0, 40)) : null)),
        ];
        var hand = new SortedDictionary<long, int>();
        if (random.Next(4) > 0)
        {
            foreach (long value in system.Where(_ => random.Next(2) == 0))
            {
                hand[value * 100] = random.Next(0, 5);
            }
        }

        // Now and then a value that is no longer in use but still about.
        ImmutableArray<Money> notes = Notes(system);
        if (random.Next(4) == 0 && notes.Length > 1)
        {
            notes = notes.RemoveAt(random.Next(notes.Length));
        }

        CashSource source = random.Next(4) == 0
            ? new CashSource.Machine(notes[random.Next(notes.Length)..], null)
            : new CashSource.Teller();
        return new NoteRequest(notes, Core.Cash.Notes.Of(hand), source, parts);
    }

    /// <summary>A large household: pots of five weeks each with the wishes of their pot, and 200 notes on hand.</summary>
    public static NoteRequest Large(int seed, long[] system, int pots = 30)
    {
        Random random = new(seed);
        List<NotePart> parts = [];
        for (int pot = 0; pot < pots; pot++)
        {
            long? top = random.Next(3) == 0 ? system[random.Next(2, system.Length)] : null;
            (long, long)? small = random.Next(4) == 0 ? (system[random.Next(1, 4)], system[0] * random.Next(2, 12)) : null;
            long amount = system[0] * random.Next(2, 150);
            for (int week = 0; week < 5; week++)
            {
                long units = Math.Max(system[0], amount + (system[0] * random.Next(-3, 4)));
                parts.Add(Part($"pot {pot}", units, top, small) with { Week = new NodaTime.LocalDate(2026, 1, 2).PlusWeeks(week) });
            }
        }

        var hand = new SortedDictionary<long, int>();
        for (int note = 0; note < 200; note++)
        {
            long value = Any(random, system) * 100;
            hand[value] = hand.GetValueOrDefault(value) + 1;
        }

        return new NoteRequest(Notes(system), Core.Cash.Notes.Of(hand), new CashSource.Teller(), [.. parts]);
    }

    private static long Any(Random random, long[] values) => values[random.Next(values.Length)];
}
