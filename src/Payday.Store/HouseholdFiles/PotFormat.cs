using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Debts;
using Payday.Core.Pots;
using Payday.Store.Fields;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Pots in a household file, each with what it has at the start.</summary>
internal static class PotFormat
{
    public static ImmutableArray<Pot> Read(JsonCursor? list, HouseholdParts parts, ImmutableArray<Debt> debts)
    {
        ImmutableArray<NamedItem> items = NamedList.Read(list, NameRule.Pot, parts);
        ImmutableArray<int> ranks = PotRanks.Read(items);
        (string Id, string Name)[] known = [.. items.Select(item => (item.Id, item.Name))];
        (string Id, string Name)[] owed = [.. debts.Select(debt => (debt.Id, debt.Name))];
        return [.. items.Select((item, i) => Read(item, ranks[i], parts, (known, owed)))];
    }

    public static void Write(Utf8JsonWriter json, ImmutableArray<Pot> pots, ImmutableSortedDictionary<string, Money> has)
    {
        json.WriteStartArray("pots");
        foreach (Pot pot in pots)
        {
            json.WriteStartObject();
            json.WriteString("id", pot.Id);
            json.WriteString("name", pot.Name);
            PotKindFormat.Write(json, pot.Kind);
            json.WriteString("held", Words.Places.WordFor(pot.Held));
            json.WriteNumber("rank", pot.Rank);
            json.WriteAmount("floor", pot.Floor);
            json.WriteAmount("has", has.TryGetValue(pot.Id, out Money held) ? held : null);
            NoteWishesFormat.Write(json, pot.Notes);
            LeftOverFormat.Write(json, pot.MovesOnTo);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static Pot Read(NamedItem item, int rank, HouseholdParts parts, ((string Id, string Name)[] Pots, (string Id, string Name)[] Debts) targets)
    {
        JsonFields fields = item.Fields;
        PotKind? kind = PotKindFormat.Read(fields, parts);
        JsonCursor heldField = fields.Required("held");
        Held held = heldField.OneOf(Words.Places);
        Money floor = fields.Optional("floor")?.Amount(parts.Currency) ?? Money.Zero(parts.Currency);
        NoteWishes wishes = NoteWishesFormat.Read(fields, parts.Currency, parts.Notes);
        if (heldField.IsSound)
        {
            PotWishes.Check(fields, held, kind, wishes);
        }

        MoveTarget? movesOnTo = LeftOverFormat.Read(fields.Optional("leftOver"), item, held, targets.Pots, targets.Debts);

        if (fields.Optional("has") is { } has)
        {
            parts.Held[item.Id] = has.Amount(parts.Currency);
        }

        // Of an unknown kind nothing is known about the other fields either.
        if (kind is not null)
        {
            fields.RefuseOthers();
        }

        return new Pot(item.Id, item.Name, held, rank, floor, kind ?? PotKindFormat.StandIn(parts), wishes) { MovesOnTo = movesOnTo };
    }
}
