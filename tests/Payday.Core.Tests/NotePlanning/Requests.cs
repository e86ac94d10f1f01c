using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Short ways to write note requests, in whole units of a currency.</summary>
internal static class Requests
{
    public static readonly Currency Usd = Currency.FromCode("USD");

    public static Money Units(long units) => Money.FromUnits(units, Usd);

    public static ImmutableArray<Money> Notes(params long[] units) => [.. units.Select(Units)];

    public static Notes Loose(params (long Units, int Count)[] notes) =>
        Core.Cash.Notes.Of(notes.Select(note => (note.Units * Usd.MinorPerUnit, note.Count)));

    public static Money KeptBack(this NotePlan plan) => Money.Sum(plan.Parts.Select(part => part.KeptBack), plan.Currency);

    public static NoteWishes Wishes(long? top = null, (long Note, long AtLeast)? small = null) => new(
        top is { } note ? Units(note) : null,
        small is { } wish ? new SmallMoney(Units(wish.Note), Units(wish.AtLeast)) : null);

    public static NotePart Part(string pot, long units, long? top = null, (long Note, long AtLeast)? small = null) =>
        new(new PotId(pot), pot, null, Units(units), Wishes(top, small));

    public static NoteRequest Teller(ImmutableArray<Money> notes, params NotePart[] parts) =>
        new(notes, Loose(), new CashSource.Teller(), [.. parts]);

    /// <summary>The notes of a part in whole units, largest first, such as <c>20x2 5x1</c>.</summary>
    public static string Text(this IEnumerable<KeyValuePair<long, int>> notes) =>
        string.Join(' ', notes.OrderByDescending(note => note.Key).Select(note => $"{note.Key / Usd.MinorPerUnit}x{note.Value}"));
}
