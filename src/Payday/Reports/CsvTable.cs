using System.Collections.Immutable;
using CsvHelper;
using Payday.Text;

namespace Payday.Reports;

/// <summary>A table for spreadsheets: RFC 4180, UTF-8.</summary>
/// <param name="Name">The file's name without its ending.</param>
/// <param name="Header">The names of the columns.</param>
/// <param name="Rows">The cells as text.</param>
internal sealed record CsvTable(string Name, ImmutableArray<string> Header, ImmutableArray<ImmutableArray<string>> Rows)
{
    /// <summary>The file. Control characters are gone, and no cell can be taken for a formula.</summary>
    public byte[] ToUtf8()
    {
        using var file = new MemoryStream();
        using (CsvWriter csv = CsvWriter.Create(file, new CsvWriterOptions { Injection = CsvInjection.Escape }, leaveOpen: true))
        {
            foreach (ImmutableArray<string> row in Rows.Insert(0, Header))
            {
                foreach (string cell in row)
                {
                    csv.WriteField(CleanText.OneLine(cell));
                }

                csv.EndRecord();
            }
        }

        return file.ToArray();
    }
}
