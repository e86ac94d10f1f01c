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
    // What the rule itself and the blanks around its words take at least.
    private const int Rules = 12;
    private const int WideGap = 3;
    private const int NarrowGap = 2;

    private static readonly ImmutableArray<(string Word, PurposeKind[] Kinds)> Sorts =
    [
        ("bills", [PurposeKind.SetAside]), ("debts", [PurposeKind.ForDebt, PurposeKind.ForCard]), ("pots", [PurposeKind.Pot]), ("wallet", [PurposeKind.Wallet]),
        ("not in notes", [PurposeKind.KeptBack]), ("buffer", [PurposeKind.Buffer]), ("to pay back", [PurposeKind.OwedBack]),
        ("left to place", [PurposeKind.LeftToPlace]), ("overdraft", [PurposeKind.Overdraft]),
    ];

    /// <summary>The lines.</summary>
    public static IEnumerable<FrameLine> Lines(Book book, BankAgreement? bank, OnTheWay? way, int width)
    {
        Balances balances = book.Ledger.Balances;
        NumberStyle style = book.Household.Settings.Numbers;

        string account = $"Account {balances.In(Place.Account).ToString(style)}";
        string cash = $"Cash {balances.In(Place.Cash).ToString(style)}";

        // A difference that isn't explained is among what needs doing; one that is takes a sentence.
        bool isShort = bank is null or { Difference.IsZero: true };
        string agreed = ReconcileTexts.Short(bank, style);
        bool fits = isShort && TextColumns.Width(account) + TextColumns.Width(agreed) + TextColumns.Width(cash) + Rules <= width;
        yield return FrameLine.Headed(width, account, fits ? agreed : "", cash);
        if (!fits && bank is not { IsExplained: false })
        {
            foreach (string line in TextWrap.Lines(ReconcileTexts.Whole(bank, style), width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }
        }

        if (way is not null)
        {
            foreach (string line in TextWrap.Lines($"{ReconcileTexts.Of(way, style)}.", width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }
        }

        foreach ((string lead, Place place) in ((string, Place)[])[("", Place.Account), ("cash: ", Place.Cash)])
        {
            string[] parts = [.. Sorts.Select(sort => (sort.Word, Amount: Sum(balances, place, sort.Kinds))).Where(sort => !sort.Amount.IsZero).Select(sort => Word(sort.Word, place) + " " + sort.Amount.ToString(style))];
            foreach (string line in Wrapped([lead + parts.FirstOrDefault("nothing"), .. parts.Skip(1)], width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }
        }
    }

    // What is for nothing else in cash is the notes that lie about, and what of the pots isn't in the wallet is at home.
    private static string Word(string word, Place place) => (word, place) switch
    {
        ("buffer", Place.Cash) => "loose notes",
        ("pots", Place.Cash) => "at home",
        _ => word,
    };

    private static Money Sum(Balances balances, Place place, PurposeKind[] kinds) =>
        Money.Sum(balances.PurposesIn(place).Where(purpose => kinds.Contains(purpose.Purpose.Kind)).Select(purpose => purpose.Amount), balances.Currency);

    // Word and amount stay together.
    private static IEnumerable<string> Wrapped(string[] parts, int width)
    {
        string gap = new(' ', parts.Sum(TextColumns.Width) + (WideGap * (parts.Length - 1)) <= width ? WideGap : NarrowGap);
        string line = "";
        foreach (string part in parts)
        {
            if (line.Length > 0 && line.Length + gap.Length + TextColumns.Width(part) > width)
            {
                yield return line;
                line = "";
            }

            line += (line.Length == 0 ? "" : gap) + part;
        }

        yield return line;
    }
}
