using System.Collections.Immutable;
using System.Xml;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Camt;

/// <summary>Reads ISO 20022 camt.053 and camt.052, all versions, by local names.</summary>
/// <remarks>
/// Namespaces, prefixes and what is around the message differ between banks and versions and are not asked; the parts of a
/// statement have kept their names from version 02 to 13.
/// </remarks>
internal static class CamtReader
{
    /// <summary>Reads a file.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="fallback">The currency of a statement that names none.</param>
    public static StatementFile Read(string text, Currency? fallback)
    {
        var faults = new FaultList();
        var statements = ImmutableArray.CreateBuilder<Statement>();
        using var xml = new CamtXml(text);
        int count = 0;
        try
        {
            StatementFormat? format = null;
            while (xml.Next())
            {
                if (!xml.IsStart)
                {
                    continue;
                }

                format = xml.Name switch
                {
                    "BkToCstmrStmt" => StatementFormat.Camt053,
                    "BkToCstmrAcctRpt" => StatementFormat.Camt052,
                    _ => format,
                };
                if (format is { } known && xml.Name == (known == StatementFormat.Camt053 ? "Stmt" : "Rpt"))
                {
                    var statement = new CamtStatement(known, xml.Line);
                    count++;
                    if (count > ReadingLimits.MostStatements || !ReadInto(statement, xml))
                    {
                        return StatementFile.Refused(FaultKind.TooManyLines, xml.Line, wanted: $"{ReadingLimits.MostLines}");
                    }

                    if (statement.Finish(fallback, faults) is { } done)
                    {
                        statements.Add(done);
                    }
                }
            }
        }
        catch (XmlException)
        {
            faults.Add(FaultKind.BrokenXml, xml.Line);
        }
        catch (CamtTooDeepException tooDeep)
        {
            faults.Add(FaultKind.TooDeep, tooDeep.Line);
        }

        if (statements.Count == 0 && faults.Count == 0)
        {
            faults.Add(FaultKind.NoStatement, 0);
        }

        return new StatementFile(statements.ToImmutable(), faults.ToImmutable());
    }

    // Part by part, so that only one entry is in memory as XML.
    private static bool ReadInto(CamtStatement statement, CamtXml xml)
    {
        if (xml.IsEmpty)
        {
            return true;
        }

        while (xml.Next() && !xml.IsEnd)
        {
            if (!xml.IsStart)
            {
                continue;
            }

            statement.Take(xml.ReadElement());
            if (statement.LineCount > ReadingLimits.MostLines)
            {
                return false;
            }
        }

        return true;
    }
}
