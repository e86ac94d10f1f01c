using System.Globalization;
using System.Text.Json.Nodes;

namespace Payday.Tests.Lives;

/// <summary>What a withdrawal and its slip must hold to, whichever of the equally good note plans was taken (design, 5.4 and 5.7).</summary>
internal static class ModelNotes
{
    public static long Worth(JsonObject notes) => notes.Sum(note => Cents(note.Key) * (long)note.Value!);

    /// <summary>What of the notes in the pots did not come from the bank.</summary>
    public static long Reused(JsonNode slip) =>
        slip["filling"]!.AsArray().Sum(part => Worth(part!["notes"]!.AsObject())) - Worth(slip["withdraw"]!.AsObject());

    /// <summary>What doesn't hold, a sentence each.</summary>
    public static IEnumerable<string> Faults(ModelBook book, ModelPayday payday, JsonNode withdrawal, JsonNode slip)
    {
        var parts = slip["filling"]!.AsArray().Select(part => (
            Pot: (string)part!["pot"]!,
            Week: (string?)part["week"],
            Notes: part["notes"]!.AsObject())).Where(part => part.Notes.Count > 0).ToList();
        var wanted = payday.Parts.Where(part => part.Amount > 0).Select(part => (part.Pot, Week: part.Week is { } week ? ModelViews.Iso(week) : null, part.Amount)).ToList();
        foreach ((string pot, string? week, long amount) in wanted.Except(parts.Select(part => (part.Pot, part.Week, Worth(part.Notes)))))
        {
            yield return $"slip: no {ModelViews.Plain(amount)} for {pot}, {week}";
        }

        foreach ((string pot, string? week, long amount) in parts.Select(part => (part.Pot, part.Week, Worth(part.Notes))).Except(wanted))
        {
            yield return $"slip: {ModelViews.Plain(amount)} for {pot}, {week}, which the model hasn't";
        }

        foreach ((string pot, _, JsonObject notes) in parts)
        {
            long top = book.Pot(pot).TopNote is > 0 and var most ? most : long.MaxValue;
            foreach ((string note, JsonNode? count) in notes)
            {
                if (!LifeHousehold.Notes.Contains(Cents(note)) || Cents(note) > top || (int)count! <= 0)
                {
                    yield return $"slip: {count} x {note} for {pot}";
                }
            }
        }

        Dictionary<string, int> needed = parts.SelectMany(part => part.Notes).GroupBy(note => note.Key).ToDictionary(note => note.Key, note => note.Sum(one => (int)one.Value!));
        foreach ((string note, JsonNode? count) in slip["withdraw"]!.AsObject().Where(note => (int)note.Value! > needed.GetValueOrDefault(note.Key)))
        {
            yield return $"slip: {count} x {note} withdrawn, but only {needed.GetValueOrDefault(note)} needed";
        }

        long withdrawn = Worth(slip["withdraw"]!.AsObject());
        Dictionary<string, long> kept = book.Pots.Where(pot => pot.Cash && payday.InNotes(pot) > 0).ToDictionary(pot => pot.Name, payday.KeptBack);
        (string What, long Said, long Is)[] figures =
        [
            ("slip total", Cents((string)slip["withdrawTotal"]!), withdrawn),
            ("run total", Cents((string)withdrawal["total"]!), withdrawn),
            ("run notes", Worth(withdrawal["notes"]!.AsObject()), withdrawn),
            ("reused", Cents((string)withdrawal["reused"]!), Reused(slip)),
            ("reused of what is loose", Math.Min(Reused(slip), book.Ledger.Has(ModelLedger.Loose)), Reused(slip)),
            ("kept back", Cents((string)withdrawal["keptBack"]!), kept.Values.Sum()),
            .. kept.Select(pot => ($"kept back for {pot.Key}", Cents((string?)slip["keptBack"]![pot.Key] ?? "0"), pot.Value)),
        ];
        foreach ((string what, long said, long real) in figures.Where(figure => figure.Said != figure.Is))
        {
            yield return $"{what}: {ModelViews.Plain(said)}, the model has {ModelViews.Plain(real)}";
        }
    }

    private static long Cents(string plain) => (long)(decimal.Parse(plain, CultureInfo.InvariantCulture) * 100);
}
