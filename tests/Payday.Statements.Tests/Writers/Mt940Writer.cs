using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Writers;

/// <summary>Writes statements as MT940 with structured texts in pieces of 27 characters.</summary>
internal static class Mt940Writer
{
    private const int Piece = 27;
    private static readonly LocalDatePattern Compact = LocalDatePattern.CreateWithInvariantCulture("yyMMdd");
    private static readonly LocalDatePattern Entry = LocalDatePattern.CreateWithInvariantCulture("MMdd");

    public static string Write(Statement statement, bool hasEnvelope)
    {
        var text = new StringBuilder(hasEnvelope ? "{1:F01MADEBANKXXX0000000000}{2:I940MADEBANKXXXXN3020}{4:\r\n" : "");
        void Field(string tag, string value) => text.Append(CultureInfo.InvariantCulture, $":{tag}:{value}\r\n");
        Field("20", statement.Id);
        Field("25", statement.Account);
        Field("28C", $"{statement.Number}/1");
        Field("60F", Balance(statement.Opening!));
        foreach (StatementLine line in statement.Lines)
        {
            string mark = line.Amount.IsNegative ? "D" : "CR";
            Field("61", $"{Day(line.Date)}{Entry.Format(line.Date)}{mark}{Amount(line.Amount)}NTRFNONREF//{line.Place}");
            Field("86", $"166?00MADE{Pieces(line.Text)}?32{line.Party}");
        }

        Field("62F", Balance(statement.Closing!));
        return text.Append(hasEnvelope ? "-}" : "-\r\n").ToString();
    }

    private static string Pieces(string text) =>
        string.Concat(text.Chunk(Piece).Select((piece, i) => $"\r\n?{20 + i}{new string(piece)}"));

    private static string Balance(Balance balance) =>
        $"{(balance.Amount.IsNegative ? "D" : "C")}{Day(balance.Date!.Value)}{balance.Amount.Currency.Code}{Amount(balance.Amount)}";

    private static string Amount(Money amount) => (amount.IsNegative ? -amount : amount).ToPlain().Replace('.', ',');

    private static string Day(LocalDate day) => Compact.Format(day);
}
