using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>An entry (Ntry) as it was written.</summary>
/// <param name="Element">All of it.</param>
/// <param name="IsBooked">Whether it is on the account.</param>
internal sealed record CamtEntry(CamtElement Element, bool IsBooked)
{
    /// <summary>The currency written at its amount; empty for none.</summary>
    public string CurrencyCode => Element.Find("Amt")?.CurrencyCode ?? "";

    /// <summary>An entry of its element.</summary>
    public static CamtEntry Of(CamtElement element)
    {
        // A text up to version 06, a code or a bank's own word from 07 on; only BOOK is on the account. Where nothing is said, it is.
        CamtElement? status = element.Find("Sts");
        string said = status?.TextOf("Cd") is { Length: > 0 } code ? code
            : status?.TextOf("Prtry") is { Length: > 0 } own ? own
            : status?.Text ?? "";
        return new CamtEntry(element, said is "BOOK" or "");
    }

    /// <summary>1 for a credit, -1 for a debit, null where neither is said.</summary>
    public static int? SignOf(CamtElement element) => element.TextOf("CdtDbtInd") switch
    {
        "CRDT" => 1,
        "DBIT" => -1,
        _ => null,
    };

    /// <summary>The day in a Dt or a DtTm, as written: the offset behind a time moves nothing.</summary>
    public static DayReading DayOf(CamtElement? choice) =>
        DayReading.Iso(choice?.TextOf("Dt") is { Length: > 0 } day ? day : choice?.TextOf("DtTm"));
}
