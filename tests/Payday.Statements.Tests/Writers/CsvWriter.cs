using System.Globalization;
using System.Text;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Writers;

/// <summary>Writes statements as CSV in any dialect.</summary>
internal static class CsvWriter
{
    public static string Write(Statement statement, CsvDialect dialect)
    {
        var rows = new List<string[]>();
        var date = LocalDatePattern.CreateWithInvariantCulture(dialect.Date);
        foreach (StatementLine line in statement.Lines)
        {
            string[] balance = dialect.HasBalance ? [Signed(line.BalanceAfter!.Value, dialect)] : [];
            rows.Add([date.Format(line.Date), line.Party, line.Text, .. Amounts(line.Amount, dialect), "EUR", .. balance]);
        }

        if (dialect.NewestFirst)
        {
            rows.Reverse();
        }

        if (dialect.HasHeader)
        {
            string[] amounts = dialect.Shape switch
            {
                AmountShape.TwoColumns => ["Paid out", "Paid in"],
                AmountShape.Word or AmountShape.StrangeWord => ["Amount", "Direction"],
                _ => ["Amount"],
            };
            string[] balance = dialect.HasBalance ? ["Balance"] : [];
            rows.Insert(0, ["Date", "Name", "Description", .. amounts, "Currency", .. balance]);
        }

        var text = new StringBuilder();
        foreach (string[] row in rows)
        {
            text.AppendJoin(dialect.Separator, row.Select(cell => Quoted(cell, dialect.Separator))).Append("\r\n");
        }

        return text.ToString();
    }

    private static string[] Amounts(Money amount, CsvDialect dialect)
    {
        string size = Signed(amount.IsNegative ? -amount : amount, dialect);
        return dialect.Shape switch
        {
            AmountShape.Signed => [Signed(amount, dialect)],
            AmountShape.Turned => [Signed(-amount, dialect)],
            AmountShape.MinusBehind => [amount.IsNegative ? size + "-" : size],
            AmountShape.TwoColumns => amount.IsNegative ? [size, ""] : ["", size],
            AmountShape.Word => [size, amount.IsNegative ? "DBIT" : "CRDT"],
            _ => [size, amount.IsNegative ? "Ulos" : "Sis\u00E4\u00E4n"],
        };
    }

    private static string Signed(Money amount, CsvDialect dialect)
    {
        string plain = amount.ToString(NumberStyle.CommaPoint);
        return plain.Replace(",", "\u0001", StringComparison.Ordinal).Replace('.', dialect.Mark).Replace("\u0001", dialect.Group, StringComparison.Ordinal);
    }

    private static string Quoted(string cell, char separator) =>
        cell.AsSpan().ContainsAny([separator, '"', '\n']) ? string.Create(CultureInfo.InvariantCulture, $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"") : cell;
}
