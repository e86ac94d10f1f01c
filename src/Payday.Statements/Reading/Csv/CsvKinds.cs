using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>The kind of a line by the word in a column of kinds.</summary>
internal static class CsvKinds
{
    // Folded; the first that is in the cell decides. Common practice of banks' exports, no source.
    private static readonly (string Word, LineKind Kind)[] Words =
    [
        ("STANDING", LineKind.StandingOrder), ("DAUERAUFTRAG", LineKind.StandingOrder), ("DIRECT DEBIT", LineKind.DirectDebit),
        ("LASTSCHRIFT", LineKind.DirectDebit), ("INCASSO", LineKind.DirectDebit), ("INTEREST", LineKind.Interest), ("ZINS", LineKind.Interest),
        ("FEE", LineKind.Fee), ("CHARGE", LineKind.Fee), ("ENTGELT", LineKind.Fee), ("GEBUHR", LineKind.Fee), ("CASH", LineKind.Cash),
        ("ATM", LineKind.Cash), ("BARGELD", LineKind.Cash), ("WITHDRAWAL", LineKind.Cash), ("CHEQUE", LineKind.Cheque), ("CHECK", LineKind.Cheque),
        ("CARD", LineKind.Card), ("KARTE", LineKind.Card), ("POS", LineKind.Card), ("SALARY", LineKind.Pay), ("PAYROLL", LineKind.Pay),
        ("LOHN", LineKind.Pay), ("TRANSFER", LineKind.Transfer), ("UBERWEISUNG", LineKind.Transfer),
    ];

    /// <summary>The kind, <see cref="LineKind.Other"/> where the word says none.</summary>
    public static LineKind Of(string word)
    {
        string folded = Folding.Fold(word);
        foreach ((string part, LineKind kind) in Words)
        {
            if (folded.Contains(part, StringComparison.Ordinal))
            {
                return kind;
            }
        }

        return LineKind.Other;
    }
}
