using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>What stands around the table: balances, the account, the currency.</summary>
internal static class CsvLabels
{
    // Common practice of banks' exports, no source; folded.
    private static readonly string[] Opening = ["OPENING", "BEGINNING", "START BAL", "STARTING", "PREVIOUS BAL", "ANFANGSSALDO", "ALTER KONTOSTAND", "ALTER SALDO", "BEGINSALDO", "SALDO INICIAL", "SALDO INIZIALE", "ANCIEN SOLDE", "SOLDE INITIAL", "INGAENDE"];
    private static readonly string[] Closing = ["CLOSING", "ENDING", "END BAL", "CURRENT BAL", "NEW BAL", "ENDSALDO", "NEUER KONTOSTAND", "NEUER SALDO", "EINDSALDO", "SALDO FINAL", "SALDO FINALE", "NOUVEAU SOLDE", "SOLDE FINAL", "UTGAENDE", "BALANCE", "KONTOSTAND", "SALDO", "SOLDE"];

    /// <summary>The balance before the lines, or null.</summary>
    public static CsvLabel? OpeningOf(CsvTable table, char mark, int decimals) => Find(table, Opening, [], mark, decimals);

    /// <summary>The balance after the lines, or null.</summary>
    public static CsvLabel? ClosingOf(CsvTable table, char mark, int decimals) => Find(table, Closing, Opening, mark, decimals);

    /// <summary>The account: an IBAN before the table, else what stands behind a word for account there; empty for none.</summary>
    public static string AccountOf(CsvTable table)
    {
        foreach (CsvRow row in table.Before)
        {
            foreach (string cell in row.Cells)
            {
                if (AccountText.FindIban(cell) is { Length: > 0 } iban)
                {
                    return iban;
                }
            }
        }

        return table.Before
            .Where(row => row.Filled >= 2 && CsvWords.RoleOf(row[0]) == CsvRole.OwnAccount)
            .Select(row => CleanText.Of(row[1]).Replace(" ", "", StringComparison.Ordinal))
            .FirstOrDefault("");
    }

    private static CsvLabel? Find(CsvTable table, string[] words, string[] not, char mark, int decimals)
    {
        foreach (CsvRow row in table.Before.Concat(table.After))
        {
            string label = Folding.Fold(row.Cells.FirstOrDefault(cell => cell.Length > 0, ""));
            if (!Array.Exists(words, word => label.Contains(word, StringComparison.Ordinal)) || Array.Exists(not, word => label.Contains(word, StringComparison.Ordinal)))
            {
                continue;
            }

            foreach (string cell in row.Cells.Reverse())
            {
                if (!CsvDate.IsAny(cell) && AmountText.Read(cell, mark, decimals) is { Ok: true } amount)
                {
                    return new CsvLabel(amount.MinorUnits, row.Line);
                }
            }
        }

        return null;
    }
}
