using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Reading.Camt;
using Payday.Statements.Reading.Csv;
using Payday.Statements.Reading.Mt940;
using Payday.Statements.Reading.Ofx;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading;

/// <summary>Reads a bank's file, whatever of the open formats it is in.</summary>
/// <remarks>
/// The format is found by the content. No bytes make it throw, and time and memory are bounded by <see cref="ReadingLimits"/>.
/// </remarks>
public static class StatementReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="bytes">All of the file.</param>
    /// <param name="options">What is known before.</param>
    public static StatementFile Read(ReadOnlyMemory<byte> bytes, ReadingOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (bytes.Length > ReadingLimits.MostBytes)
        {
            return StatementFile.Refused(FaultKind.TooLarge, wanted: $"{ReadingLimits.MostBytes / ReadingLimits.Megabyte}");
        }

        if (FileSignature.NameOf(bytes.Span) is { } other)
        {
            return StatementFile.Refused(FaultKind.NotAText, found: other);
        }

        string text = TextDecoder.Decode(bytes.Span);
        if (string.IsNullOrWhiteSpace(text))
        {
            return StatementFile.Refused(FaultKind.Empty);
        }

        return FormatGuess.Of(text) switch
        {
            TextFormat.Ofx => OfxReader.Read(text, options.Currency),
            TextFormat.Camt => CamtReader.Read(text, options.Currency),
            TextFormat.Mt940 => Mt940Reader.Read(text),
            TextFormat.OtherXml => StatementFile.Refused(FaultKind.NotAStatement),
            _ => CsvStatementReader.Read(text, options),
        };
    }
}
