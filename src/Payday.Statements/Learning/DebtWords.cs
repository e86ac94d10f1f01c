using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Learning;

/// <summary>Whether the words of lines speak of a debt. Only a question: what is owed, and at what rate, no statement of an account says.</summary>
internal static class DebtWords
{
    // Words of lenders (common practice, no source).
    private static readonly HashSet<string> Words = new(StringComparer.Ordinal)
    {
        "LOAN", "LOANS", "MORTGAGE", "LENDER", "LENDING", "INSTALMENT", "INSTALMENTS", "INSTALLMENT", "INSTALLMENTS",
        "DARLEHEN", "KREDIT", "HYPOTHEK", "PRET", "LENING", "PRESTAMO", "MUTUO",
    };

    /// <summary>Whether most lines have such a word.</summary>
    public static bool AreIn(IReadOnlyCollection<StatementLine> lines) =>
        lines.Count(line => LineWords.Of(line.Party, line.Text).Exists(Words.Contains)) * 2 > lines.Count;
}
