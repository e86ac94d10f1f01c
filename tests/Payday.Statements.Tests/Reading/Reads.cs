using System.Text;
using Payday.Core.Amounts;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;

namespace Payday.Statements.Tests.Reading;

/// <summary>Reads texts in tests.</summary>
internal static class Reads
{
    public static Currency Euro { get; } = Currency.FromCode("EUR");

    public static StatementFile Text(string text, ReadingOptions? options = null) =>
        StatementReader.Read(Encoding.UTF8.GetBytes(text), options ?? new ReadingOptions { Currency = Euro });

    public static Statement One(string text, ReadingOptions? options = null) => Assert.Single(Text(text, options).Statements);

    public static string[] Amounts(this Statement statement) => [.. statement.Lines.Select(line => line.Amount.ToPlain())];

    public static string[] Days(this Statement statement) => [.. statement.Lines.Select(line => NodaTime.Text.LocalDatePattern.Iso.Format(line.Date))];
}
