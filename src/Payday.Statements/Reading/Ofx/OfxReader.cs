using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Ofx;

/// <summary>Reads OFX 1.0.2 to 2.x: bank and card statements, several in a file.</summary>
/// <remarks>
/// OFX 1.6: 11.4 (statement download), 3.2.8 (dates), 3.2.9 (amounts), and the DTD. The header isn't needed: what it says of the
/// encoding is often wrong, and both kinds are read alike.
/// </remarks>
internal static class OfxReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="fallback">The currency of a statement that names none.</param>
    public static StatementFile Read(string text, Currency? fallback)
    {
        var faults = new FaultList();
        var places = new LinePlaces(text);
        var statements = ImmutableArray.CreateBuilder<Statement>();
        OfxStatement? statement = null;
        int start = text.IndexOf("<OFX", StringComparison.OrdinalIgnoreCase);
        bool tooMany = false;
        int count = 0;

        void Finish()
        {
            if (statement?.Finish(fallback, faults) is { } done)
            {
                statements.Add(done);
            }

            statement = null;
        }

        foreach (OfxToken token in OfxTokens.Of(text, Math.Max(start, 0)))
        {
            bool isStatement = token.Name is "STMTRS" or "CCSTMTRS";
            if (isStatement)
            {
                Finish();
                count++;
                statement = token.Kind == OfxTokenKind.Open ? new OfxStatement(token.Name == "CCSTMTRS") : null;
            }
            else if (token.Name is "STMTTRNRS" or "CCSTMTTRNRS" or "OFX")
            {
                Finish();
            }
            else
            {
                statement?.Take(token, places.At(token.Place));
            }

            if (count > 2 * ReadingLimits.MostStatements || statement?.LineCount > ReadingLimits.MostLines)
            {
                tooMany = true;
                break;
            }
        }

        if (tooMany)
        {
            return StatementFile.Refused(FaultKind.TooManyLines, wanted: $"{ReadingLimits.MostLines}");
        }

        if (statement is not null)
        {
            faults.Add(FaultKind.CutOff, places.At(text.Length));
            Finish();
        }

        if (statements.Count == 0 && faults.Count == 0)
        {
            faults.Add(FaultKind.NoStatement, 0);
        }

        return new StatementFile(statements.ToImmutable(), faults.ToImmutable());
    }
}
