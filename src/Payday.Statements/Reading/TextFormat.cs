namespace Payday.Statements.Reading;

/// <summary>What a text looks like.</summary>
internal enum TextFormat
{
    Csv,
    Ofx,
    Camt,
    Mt940,
    OtherXml,
}
