using Payday.Store.HouseholdFiles;

namespace Payday.Manual;

/// <summary>payday-household(5): the household file, made from the table of its fields.</summary>
internal static class HouseholdPage
{
    /// <summary>What man calls it.</summary>
    public const string Name = "payday-household";

    /// <summary>The page, a line each.</summary>
    public static IEnumerable<string> Lines(ProgramVersion version) =>
    [
        $".TH PAYDAY\\-HOUSEHOLD 5 {version.Date} {Roff.Quoted("Payday " + version.Number)} \"File Formats\"",
        .. Roff.AsWritten,
        ".SH NAME",
        Roff.Text(Name) + " \\- household file of payday",
        ".SH DESCRIPTION",
        Roff.Text("The whole household as one JSON file in UTF-8: settings, who pays and when, bills, debts, pots, and what was there at the start."),
        Roff.Text("`payday export` writes it, and `payday import FILE` takes it back exactly."),
        Roff.Text($"This is version {HouseholdFile.Version} of it; versions from {HouseholdFile.OldestVersion} on are read."),
        ".PP",
        Roff.Text("Amounts are texts, such as `\"45.00\"`, so that no program on the way can round them, with at most the currency's decimals; dates are like `\"2026-03-05\"`."),
        Roff.Text("A field that is misspelt, unknown or there twice is refused, and all faults of a file are listed at once with their line."),
        ".PP",
        Roff.Text("The household file holds no history: no closed paydays, fills, counts, purchases or payments."),
        Roff.Text("These are in the data folder, which `payday backup` copies."),
        ".SH FIELDS",
        "What may be left out is marked with a question mark.",
        .. HouseholdFields.All.SelectMany(field => (string[])[".TP", Roff.Text(field.Names), Roff.Text(field.Holds)]),
        ".SH LIMITS",
        "A list holds at most 500 items and a file at most 50 MB.",
        ".SH EXAMPLES",
        "The least that is a household:",
        ".PP",
        ".nf",
        .. Example.Split('\n').Select(line => Roff.Text(line)),
        ".fi",
        ".SH SEE ALSO",
        ".BR payday (1)",
    ];

    /// <summary>A household file that is taken.</summary>
    public const string Example = """
        {
          "version": 3,
          "name": "Two rooms",
          "start": "2026-03-05",
          "currency": "EUR",
          "fillDay": "Friday",
          "holidays": "TARGET",
          "opening": { "account": "310.00" },
          "sources": [
            { "name": "Wage", "schedule": { "kind": "monthly", "day": "last" },
              "shift": "before", "expected": "1900.00" }
          ],
          "pots": [
            { "name": "Food", "kind": "spending", "amount": "90.00",
              "per": "week", "held": "cash" }
          ]
        }
        """;
}
