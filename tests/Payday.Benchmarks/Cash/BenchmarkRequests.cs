using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Benchmarks.Cash;

/// <summary>A household far larger than any: 30 pots of five weeks each, 200 loose notes on hand.</summary>
internal static class BenchmarkRequests
{
    private const int Pots = 30;
    private const int Weeks = 5;
    private const int LooseNotes = 200;

    /// <summary>The same request each time for the same currency and notes.</summary>
    public static NoteRequest Make(string code, params long[] notes)
    {
        Random random = new(20_260_102);
        Currency currency = Currency.FromCode(code);
        var hand = new SortedDictionary<long, int>();
        for (int i = 0; i < LooseNotes; i++)
        {
            long value = notes[random.Next(notes.Length)] * currency.MinorPerUnit;
            hand[value] = hand.GetValueOrDefault(value) + 1;
        }

        return new NoteRequest(
            [.. notes.Select(Units)],
            Notes.Of(hand),
            new CashSource.Teller(),
            [.. Enumerable.Range(0, Pots).SelectMany(pot => PartsOf(pot))]);

        IEnumerable<NotePart> PartsOf(int pot)
        {
            Money? top = random.Next(3) == 0 ? Units(notes[random.Next(2, notes.Length)]) : null;
            SmallMoney? small = random.Next(4) == 0 ? new(Units(notes[2]), Units(notes[0] * 4)) : null;
            long units = random.Next(10, 150);
            return Enumerable.Range(0, Weeks).Select(week => new NotePart(
                new($"pot-{pot}"),
                $"Pot {pot}",
                new LocalDate(2026, 1, 2).PlusWeeks(week),
                Units(notes[0] * (units + random.Next(-3, 4))),
                new NoteWishes(top, small))).ToArray();
        }

        Money Units(long units) => Money.FromUnits(units, currency);
    }
}
