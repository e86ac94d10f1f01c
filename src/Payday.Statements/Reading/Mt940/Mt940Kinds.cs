using Payday.Statements.Lines;

namespace Payday.Statements.Reading.Mt940;

/// <summary>The kind of a line by the three letters of its type, else by the German code of its text.</summary>
/// <remarks>SWIFT category 9, field 61; annex 3 to the German data transmission agreement, 8.2.6. Both from memory, the commonest only.</remarks>
internal static class Mt940Kinds
{
    /// <summary>The kind.</summary>
    public static LineKind Of(string type, string code) => type switch
    {
        "CHG" or "COM" => LineKind.Fee,
        "INT" => LineKind.Interest,
        "STO" => LineKind.StandingOrder,
        "DDT" => LineKind.DirectDebit,
        "CHK" => LineKind.Cheque,
        _ => code switch
        {
            "005" or "104" or "105" or "107" => LineKind.DirectDebit,
            "106" => LineKind.Card,
            "008" or "117" or "152" => LineKind.StandingOrder,
            "053" or "153" => LineKind.Pay,
            "083" => LineKind.Cash,
            "808" => LineKind.Fee,
            _ => type == "TRF" ? LineKind.Transfer : LineKind.Other,
        },
    };
}
