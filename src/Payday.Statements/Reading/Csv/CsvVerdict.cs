using Payday.Statements.Files;

namespace Payday.Statements.Reading.Csv;

/// <summary>The reading chosen, or what to ask first.</summary>
/// <param name="Reading">The reading; null where something is asked or no column can be an amount.</param>
/// <param name="Proof">How the balances prove it; null where there is no such column.</param>
/// <param name="Question">What to ask; null where nothing is.</param>
internal sealed record CsvVerdict(CsvReading? Reading, CsvProof? Proof, CsvQuestion? Question)
{
    /// <summary>No column can be an amount.</summary>
    public static CsvVerdict None => new(null, null, null);
}
