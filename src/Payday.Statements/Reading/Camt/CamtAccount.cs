using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>Accounts of a camt message.</summary>
internal static class CamtAccount
{
    /// <summary>An account's number: IBAN, else the other identification, without blanks; empty for none.</summary>
    public static string NumberOf(CamtElement? account)
    {
        string iban = account?.TextOf("Id", "IBAN") ?? "";
        return CleanText.Of(iban.Length > 0 ? iban : account?.TextOf("Id", "Othr", "Id")).Replace(" ", "", StringComparison.Ordinal);
    }
}
