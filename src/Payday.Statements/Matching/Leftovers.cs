using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Matching;

/// <summary>Names statement lines without a partner.</summary>
internal static class Leftovers
{
    // Folded; common practice of banks' texts, no source.
    private static readonly string[] FeeWords = ["FEE", "FEES", "CHARGE", "CHARGES", "ENTGELT", "GEBUHR", "GEBUHREN", "FRAIS", "COMISION", "KOSTEN", "PALKKIO"];
    private static readonly string[] InterestWords = ["INTEREST", "ZINSEN", "INTERETS", "INTERESES", "RENTE", "RANTA", "KORKO"];
    private static readonly string[] RefundWords = ["REFUND", "REVERSAL", "RETURN", "ERSTATTUNG", "GUTSCHRIFT", "REMBOURSEMENT", "DEVOLUCION"];

    /// <summary>What a line looks like, by the bank's kind, its words, and the lines before it.</summary>
    public static LeftoverKind KindOf(StatementLine line, IReadOnlyList<StatementLine> lines)
    {
        List<string> words = WordRarity.WordsOf(line);
        bool Says(string[] some) => words.Exists(some.Contains);
        return line.Kind == LineKind.Fee || (line.Amount.IsNegative && Says(FeeWords)) ? LeftoverKind.Fee
            : line.Kind == LineKind.Interest || Says(InterestWords) ? LeftoverKind.Interest
            : line.Amount.IsPositive && (line.IsReversal || Says(RefundWords) || WentOutBefore(line, lines)) ? LeftoverKind.Refund
            : line.Amount.IsNegative && line.Kind is LineKind.StandingOrder or LineKind.DirectDebit ? LeftoverKind.StandingPayment
            : LeftoverKind.Unknown;
    }

    // Money comes back from where at least as much went.
    private static bool WentOutBefore(StatementLine line, IReadOnlyList<StatementLine> lines) =>
        line.Kind is not LineKind.Pay && line.Party.Length > 0 && lines.Any(other =>
            other.Date <= line.Date && other.Amount.MinorUnits <= -line.Amount.MinorUnits && Folding.Fold(other.Party) == Folding.Fold(line.Party));
}
