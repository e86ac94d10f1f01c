using System.Collections.Frozen;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Words of column names and cells. They are hints: what the data proves goes before them.</summary>
/// <remarks>Folded; common practice of banks' exports in English, German, French, Spanish, Dutch, Italian and the Nordic languages, no source.</remarks>
internal static class CsvWords
{
    // The first row with a word that the name contains decides, so what is more particular stands first.
    private static readonly (CsvRole Role, string[] Words)[] Names =
    [
        (CsvRole.Mandate, ["MANDATE", "MANDAT", "CREDITOR ID", "GLAUBIGER"]),
        (CsvRole.Balance, ["BALANCE", "SALDO", "SOLDE", "KONTOSTAND", "RUNNING"]),
        (CsvRole.ValueDate, ["VALUE DATE", "VALUEDATE", "VALUTA", "WERTSTELLUNG", "DATE DE VALEUR", "DATE VALEUR", "FECHA VALOR", "RENTEDATUM", "EFFECTIVE DATE", "INTEREST DATE"]),
        (CsvRole.Date, ["DATE", "DATUM", "FECHA", "DATA", "BUCHUNGSTAG", "BUCHUNG AM", "DATO", "PAIVA", "POSTED ON"]),
        (CsvRole.Cheque, ["CHECK NUMBER", "CHEQUE", "CHECK NO", "CHECK #", "CHEQUE NO"]),
        (CsvRole.PartyAccount, ["TO ACCOUNT", "COUNTERPARTY ACCOUNT", "PAYEE ACCOUNT", "ACCOUNT OF THE OTHER", "TEGENREKENING", "KONTONUMMER/IBAN", "IBAN ZAHLUNG", "COUNTER ACCOUNT", "OTHER ACCOUNT"]),
        (CsvRole.BankId, ["TRANSACTION ID", "TRANSACTIONID", "UNIQUE ID", "TRANSAKTIONS ID", "ENTRY ID", "BANK REFERENCE", "ARKISTOINTITUNNUS"]),
        (CsvRole.Reference, ["REFERENCE", "REFERENZ", "REFERENTIE", "REF.", "END-TO-END", "END TO END"]),
        (CsvRole.OwnAccount, ["ACCOUNT NUMBER", "AUFTRAGSKONTO", "OWN ACCOUNT", "MY ACCOUNT", "COMPTE", "CUENTA", "REKENING", "ACCOUNT", "KONTO", "IBAN"]),
        (CsvRole.Direction, ["DEBIT/CREDIT", "CREDIT/DEBIT", "DR/CR", "CR/DR", "D/C", "S/H", "SOLL/HABEN", "AF BIJ", "AF/BIJ", "DIRECTION", "IN/OUT", "CDT/DBT"]),
        (CsvRole.Out, ["DEBIT", "WITHDRAWAL", "MONEY OUT", "PAID OUT", "SOLL", "AUSGABE", "LASTSCHRIFT", "CARGO", "USCITE", "AF (", "OUT", "SPENT", "BELASTUNG", "DARE", "UT"]),
        (CsvRole.In, ["CREDIT", "DEPOSIT", "MONEY IN", "PAID IN", "HABEN", "EINNAHME", "GUTSCHRIFT", "ABONO", "ENTRATE", "RECEIVED", "AVERE", "INN", "IN"]),
        (CsvRole.Amount, ["AMOUNT", "BETRAG", "UMSATZ", "MONTANT", "IMPORTE", "BEDRAG", "IMPORTO", "BELOB", "BELOP", "BELOPP", "SUMMA", "SUM", "VALOR", "KWOTA", "MAARA"]),
        (CsvRole.Currency, ["CURRENCY", "WAHRUNG", "DEVISE", "MONEDA", "DIVISA", "MUNT", "VALUTAKOD", "CCY"]),
        (CsvRole.Status, ["STATUS", "STATE", "ESTADO", "STATO"]),
        (CsvRole.Party, ["PAYEE", "NAME", "COUNTERPARTY", "BENEFICIARY", "MERCHANT", "EMPFANGER", "BEGUNSTIGTER", "AUFTRAGGEBER", "PARTNER", "NAAM", "BENEFICIARIO", "RECEIVER", "PAYER", "SAAJA"]),
        (CsvRole.Text, ["DESCRIPTION", "MEMO", "DETAILS", "NARRATIVE", "PURPOSE", "VERWENDUNGSZWECK", "LIBELLE", "CONCEPTO", "OMSCHRIJVING", "MEDEDELING", "DESCRIZIONE", "TEXT", "TEKST", "MESSAGE", "NOTE", "PARTICULARS"]),
        (CsvRole.Kind, ["TYPE", "BUCHUNGSTEXT", "CATEGORY", "TIPO", "SOORT", "CODE", "MUTATIESOORT"]),
        (CsvRole.Number, ["NUMBER", "NUMMER", "NO.", "NR", "#", "ID", "ZIP", "BLZ", "SEQUENCE", "VOLGNR"]),
    ];

    private static readonly FrozenSet<string> OutWords = FrozenSet.ToFrozenSet(
        ["D", "DR", "DEBIT", "DBIT", "S", "SOLL", "OUT", "AF", "WITHDRAWAL", "-", "DEBET", "LASTSCHRIFT", "PAYMENT OUT", "MONEY OUT", "SENT", "DB"], StringComparer.Ordinal);

    private static readonly FrozenSet<string> InWords = FrozenSet.ToFrozenSet(
        ["C", "CR", "CREDIT", "CRDT", "H", "HABEN", "IN", "BIJ", "DEPOSIT", "+", "GUTSCHRIFT", "PAYMENT IN", "MONEY IN", "RECEIVED"], StringComparer.Ordinal);

    private static readonly string[] Pending = ["PENDING", "AUTHORI", "RESERVED", "RESERVIERT", "VORGEMERKT", "EN ATTENTE", "PENDIENTE", "IN BEHANDELING", "GERESERVEERD", "NOT POSTED", "HOLD", "VARAUS"];

    /// <summary>What a column's name hints at.</summary>
    public static CsvRole RoleOf(string name)
    {
        string folded = Folding.Fold(name.Trim());
        if (folded.Length is 0 or > 60)
        {
            return CsvRole.None;
        }

        foreach ((CsvRole role, string[] words) in Names)
        {
            foreach (string word in words)
            {
                if (word.Length > 3 ? folded.Contains(word, StringComparison.Ordinal) : HasWord(folded, word))
                {
                    return role;
                }
            }
        }

        return CsvRole.None;
    }

    /// <summary>Whether a word means out (true) or in (false); null for any other.</summary>
    public static bool? MeansOut(string word)
    {
        string folded = Folding.Fold(word.Trim());
        return OutWords.Contains(folded) ? true : InWords.Contains(folded) ? false : null;
    }

    /// <summary>Whether a cell or title says that lines aren't booked yet.</summary>
    public static bool SaysPending(string cell)
    {
        string folded = Folding.Fold(cell);
        return Array.Exists(Pending, word => folded.Contains(word, StringComparison.Ordinal));
    }

    private static bool HasWord(string text, string word)
    {
        for (int at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            int end = at + word.Length;
            bool begins = at == 0 || !char.IsLetterOrDigit(text[at - 1]);
            bool ends = end == text.Length || !char.IsLetterOrDigit(text[end]);
            if (begins && ends)
            {
                return true;
            }
        }

        return false;
    }
}
