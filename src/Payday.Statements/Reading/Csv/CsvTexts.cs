using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Puts the texts of a row where they belong, by the column names; what no name places is the line's text.</summary>
internal sealed class CsvTexts
{
    private readonly CsvTable table;
    private readonly int[] texts;

    /// <summary>For a table read in a certain way.</summary>
    public CsvTexts(CsvTable table, CsvColumns columns)
    {
        this.table = table;
        texts =
        [
            .. Enumerable.Range(0, table.Width).Where(column =>
                table.Roles[column] is CsvRole.Text or CsvRole.None
                && column != columns.Date && column != columns.Amount && column != columns.Out && column != columns.Balance
                && column != columns.Direction),
        ];
    }

    /// <summary>The line with its texts.</summary>
    public StatementLine Fill(CsvRow row, StatementLine line)
    {
        string text = texts.Length == 1 ? CleanText.Of(row[texts[0]]) : CleanText.Join(texts.Select(column => row[column]).Where(IsText));
        string kind = First(row, CsvRole.Kind);
        return line with
        {
            Party = First(row, CsvRole.Party),
            PartyAccount = First(row, CsvRole.PartyAccount),
            Text = text,
            Mandate = First(row, CsvRole.Mandate),
            BankId = First(row, CsvRole.BankId),
            Reference = First(row, CsvRole.Reference),
            ChequeNumber = First(row, CsvRole.Cheque).TrimStart('0'),
            Kind = CsvKinds.Of(kind),
        };
    }

    // Without names a further date or amount, such as the amount abroad, would make each line's text another.
    private bool IsText(string cell) => table.Header is not null || (!CsvDate.IsAny(cell) && cell.Any(char.IsLetter));

    private string First(CsvRow row, CsvRole role)
    {
        for (int column = 0; column < table.Width; column++)
        {
            if (table.Roles[column] == role && row[column].Length > 0)
            {
                return CleanText.Of(row[column]);
            }
        }

        return "";
    }
}
