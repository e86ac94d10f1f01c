using Payday.Statements.Lines;

namespace Payday.Statements.Matching;

/// <summary>Words by which banks call cash that is fetched or brought, where they give no kind. Common practice of banks' texts, no source.</summary>
public static class CashWords
{
    // Folded.
    private static readonly string[] All =
    [
        "CASH", "ATM", "WITHDRAWAL", "DEPOSIT", "BARGELD", "GELDAUTOMAT", "GELDAUTOMAAT", "EINZAHLUNG", "RETRAIT", "CAJERO", "BANCOMAT", "PRELIEVO", "UTTAG", "BANKOMAT",
    ];

    // What nothing but a cash machine is called: also on a line by card.
    private static readonly string[] Machines = ["ATM", "GELDAUTOMAT", "GELDAUTOMAAT", "CAJERO", "BANCOMAT", "BANKOMAT"];

    /// <summary>Whether one of them is among some words, folded.</summary>
    internal static bool AreIn(IEnumerable<string> words) => words.Any(All.Contains);

    /// <summary>Whether a line is cash, by its kind or by its words.</summary>
    public static bool Are(StatementLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Kind switch
        {
            LineKind.Cash => true,
            LineKind.Other => AreIn(WordRarity.WordsOf(line)),
            LineKind.Card => WordRarity.WordsOf(line).Exists(Machines.Contains),
            _ => false,
        };
    }
}
