using Payday.Statements.Lines;

namespace Payday.Statements.Reading.Camt;

/// <summary>The kind of an entry by its bank transaction code.</summary>
/// <remarks>
/// ISO 20022 external code set, families and sub-families of domain PMNT, from memory but for those in the published samples.
/// Codes that a bank made itself say nothing here.
/// </remarks>
internal static class CamtKinds
{
    /// <summary>The kind by the entry's code, else by that of its only payment.</summary>
    public static LineKind Of(CamtElement entry, CamtElement? detail, bool comesIn)
    {
        LineKind kind = Of(entry, comesIn);
        return kind == LineKind.Other && detail is not null ? Of(detail, comesIn) : kind;
    }

    private static LineKind Of(CamtElement element, bool comesIn)
    {
        CamtElement? family = element.Find("BkTxCd", "Domn", "Fmly");
        string code = family?.TextOf("Cd") ?? "";
        return (code, family?.TextOf("SubFmlyCd") ?? "") switch
        {
            (_, "CHRG" or "FEES" or "COMM") => LineKind.Fee,
            (_, "INTR") => LineKind.Interest,
            (_, "SALA" or "PAYR") when comesIn => LineKind.Pay,
            (_, "CWDL" or "CDPT" or "BCDP" or "BCWD") => LineKind.Cash,
            (_, "STDO") => LineKind.StandingOrder,
            ("RDDT" or "IDDT", _) => LineKind.DirectDebit,
            ("CCRD" or "MCRD", _) => LineKind.Card,
            ("ICHQ" or "RCHQ", _) => LineKind.Cheque,
            ("CNTR", _) => LineKind.Cash,
            ("ICDT" or "RCDT" or "IRCT" or "RRCT", _) => LineKind.Transfer,
            _ => LineKind.Other,
        };
    }
}
