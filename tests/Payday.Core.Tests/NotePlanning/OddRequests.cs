using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Note requests from a seed that no currency would lead to: any note values, hundreds of notes at home, wishes that can't be met.</summary>
internal static class OddRequests
{
    /// <summary>Notes and amounts of up to some thousands, bags of up to 500 notes of a value, pots of some weeks.</summary>
    public static NoteRequest Of(int seed)
    {
        Random random = new(seed);
        long[] system = System(random);
        long[] amounts = [.. Enumerable.Range(0, random.Next(1, random.Next(2) == 0 ? 5 : 14)).Select(_ => Amount(random))];
        return Of(random, system, Hand(random, system), amounts, weeks: 5);
    }

    /// <summary>The same with values up to thousands of millions, a million notes of a value and up to 60 values.</summary>
    public static NoteRequest Huge(int seed)
    {
        Random random = new(seed);
        long[] system = [.. Enumerable.Range(0, random.Next(1, 31)).Select(_ => Any()).Distinct().OrderDescending()];
        ImmutableSortedDictionary<long, int>.Builder hand = OnHand().ToBuilder();
        for (int i = random.Next(30); i > 0; i--)
        {
            hand[random.Next(2) == 0 ? system[random.Next(system.Length)] : Any()] = random.Next(0, 1 << random.Next(1, 20));
        }

        return Of(random, system, hand.ToImmutable(), [.. Enumerable.Range(0, random.Next(1, 40)).Select(_ => Any())], weeks: 5);

        long Any() => random.NextInt64(1, 1L << random.Next(2, 52));
    }

    /// <summary>A usual currency from a machine, with up to 500 notes of a value at home.</summary>
    public static NoteRequest MuchAtHome(int seed)
    {
        Random random = new(seed);
        long[] system = [.. new long[] { 100, 50, 20, 10, 5, 1 }.Take(random.Next(4, 7)).Select(note => note * 100)];
        ImmutableSortedDictionary<long, int> hand = system.Where(_ => random.Next(2) == 0).ToImmutableSortedDictionary(note => note, _ => random.Next(0, 501));
        return Of(random, system, hand, [.. Enumerable.Range(0, random.Next(3, 10)).Select(_ => random.Next(1, 60) * 500L)], weeks: 5) with
        {
            Source = new CashSource.Machine(random.Next(2) == 0 ? Notes(20) : Notes(50, 20), random.Next(4) == 0 ? Units(random.Next(5, 100) * 20) : null),
        };
    }

    private static NoteRequest Of(Random random, long[] system, ImmutableSortedDictionary<long, int> hand, long[] amounts, int weeks)
    {
        ImmutableArray<NotePart>.Builder parts = ImmutableArray.CreateBuilder<NotePart>();
        foreach ((int pot, long amount) in amounts.Index())
        {
            NoteWishes wishes = new(
                random.Next(3) == 0 ? Cents(random.Next(4) == 0 ? random.Next(1, 5_000) : Of(random, system)) : null,
                random.Next(3) == 0 ? new SmallMoney(Cents(random.Next(4) == 0 ? random.Next(1, 5_000) : Of(random, system)), Cents(random.NextInt64(0, amount + 1))) : null);
            for (int week = random.Next(0, weeks); week >= 0; week--)
            {
                parts.Add(new NotePart(new($"p{pot}"), $"p{pot}", new LocalDate(2026, 1, 2).PlusWeeks(week), Cents(amount), wishes));
            }
        }

        ImmutableArray<Money> notes = [.. system.Select(Cents)];
        CashSource source = random.Next(3) > 0
            ? new CashSource.Teller()
            : new CashSource.Machine([.. notes.Where(_ => random.Next(2) == 0).DefaultIfEmpty(notes[0])], random.Next(2) == 0 ? Cents(random.Next(1, 200_000)) : null);
        return new NoteRequest(notes, hand, source, parts.ToImmutable());
    }

    private static long[] System(Random random)
    {
        IEnumerable<long> values = random.Next(5) switch
        {
            0 => Enumerable.Range(0, random.Next(1, 9)).Select(_ => random.Next(1, 1 << random.Next(1, 10)) * 100L),
            1 => Enumerable.Range(0, random.Next(1, 9)).Select(_ => (long)random.Next(1, 1 << random.Next(1, 18))),
            2 => new long[] { 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000 }.Where(_ => random.Next(2) == 0).Select(note => note * 100),
            3 => Enumerable.Range(0, random.Next(1, 16)).Select(_ => random.Next(1, 40) * (random.Next(2) == 0 ? 100L : 500L)),
            _ => new long[] { 1, 5, 10, 25, 50, 100, 500, 1000, 2000, 5000, 10000 }.Where(_ => random.Next(3) > 0),
        };
        return [.. values.DefaultIfEmpty(500).Distinct().OrderDescending()];
    }

    private static ImmutableSortedDictionary<long, int> Hand(Random random, long[] system)
    {
        ImmutableSortedDictionary<long, int>.Builder hand = OnHand().ToBuilder();
        int most = random.Next(4) switch { 0 => 0, 1 => 5, 2 => 60, _ => 500 };
        foreach (long note in system.Where(_ => most > 0 && random.Next(2) == 0))
        {
            hand[note] = random.Next(0, most + 1);
        }

        for (int i = most > 0 && random.Next(3) == 0 ? random.Next(1, 5) : 0; i > 0; i--)
        {
            hand[random.Next(1, 3_000) * (random.Next(2) == 0 ? 1 : 100)] = random.Next(0, most + 1);
        }

        return hand.ToImmutable();
    }

    private static long Amount(Random random)
    {
        long amount = random.Next(1, 1 << random.Next(5, 18));
        return random.Next(3) > 0 ? (amount + 499) / 500 * 500 : amount;
    }

    private static long Of(Random random, long[] system) => system[random.Next(system.Length)];

    private static Money Cents(long cents) => Money.FromMinorUnits(cents, Usd);
}
