using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using Payday.Screens.Frames;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Home;

/// <summary>Account and cash as one strip: how much there is, what it is for, and when the bank last agreed.</summary>
internal static class HomeMoney
{
    private static readonly ImmutableArray<(string Word, PurposeKind[] Kinds)> Sorts =
    [
        ("bills", [PurposeKind.SetAside]), ("debts", [PurposeKind.ForDebt, PurposeKind.ForCard]), ("pots", [PurposeKind.Pot]), ("wallet", [PurposeKind.Wallet]),
        ("kept back", [PurposeKind.KeptBack]), ("buffer", [PurposeKind.Buffer]), ("owed back", [PurposeKind.OwedBack]),
        ("left to place", [PurposeKind.LeftToPlace]), ("overdraft", [PurposeKind.Overdraft]),
    ];

    /// <summary>The lines.</summary>
    public static IEnumerable<FrameLine> Lines(Book book, BankAgreement? bank, int width)
    {
        Balances balances = book.Ledger.Balances;
        NumberStyle style = book.Household.Settings.Numbers;

        // A difference that isn't explained is among what needs doing.
        string agreed = bank is { IsExplained: false } ? "" : ReconcileTexts.Short(bank, style);
        yield return FrameLine.Headed(width, $"Account {balances.In(Place.Account).ToString(style)}", agreed, $"Cash {balances.In(Place.Cash).ToString(style)}");
        foreach ((string name, Place place) in ((string, Place)[])[("account", Place.Account), ("cash", Place.Cash)])
        {
            string[] parts = [.. Sorts.Select(sort => (sort.Word, Amount: Sum(balances, place, sort.Kinds))).Where(sort => !sort.Amount.IsZero).Select(sort => Word(sort.Word, place) + " " + sort.Amount.ToString(style))];
            string lead = $" {TextColumns.PadRight(name, 9)}";
            foreach (string line in Wrapped(parts.Length == 0 ? ["nothing"] : parts, width - lead.Length - 1))
            {
                yield return new FrameLine([new Span(lead, Ink.Quiet), new Span(line, Ink.Plain)]);
                lead = new string(' ', lead.Length);
            }
        }
    }

    // What is for nothing else in cash is the notes that lie about.
    private static string Word(string word, Place place) => word == "buffer" && place == Place.Cash ? "loose notes" : word;

    private static Money Sum(Balances balances, Place place, PurposeKind[] kinds) =>
        Money.Sum(balances.PurposesIn(place).Where(purpose => kinds.Contains(purpose.Purpose.Kind)).Select(purpose => purpose.Amount), balances.Currency);

    // Word and amount stay together.
    private static IEnumerable<string> Wrapped(string[] parts, int width)
    {
        const string Gap = "   ";
        string line = "";
        foreach (string part in parts)
        {
            if (line.Length > 0 && line.Length + Gap.Length + TextColumns.Width(part) > width)
            {
                yield return line;
                line = "";
            }

            line += (line.Length == 0 ? "" : Gap) + part;
        }

        yield return line;
    }
}
