using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Store.Json;

namespace Payday.Screens.Setup.Fields;

/// <summary>Values of notes or coins, with blanks between them.</summary>
internal sealed class PiecesType : FieldType
{
    private const int Most = 30;

    /// <summary>A value of the file as this household writes it.</summary>
    public static string Shown(string piece, SetupWork work) => piece.Replace(".", work.Style.DecimalMark, StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) =>
        value is JsonArray pieces ? string.Join(' ', pieces.Select(piece => Shown(piece?.ToString() ?? "", work))) : value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work)
    {
        string[] words = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.TrimEnd(',', ';')).Where(word => word.Length > 0)];
        if (words.Length is 0 or > Most)
        {
            return Result.Refused<JsonNode>($"Write 1 to {Most} values with blanks between them, such as 50 20 10 5.");
        }

        var pieces = new SortedSet<Money>();
        foreach (string word in words)
        {
            Result<Money> piece = Money.Parse(word, work.Currency, work.Style);
            if (!piece.Ok)
            {
                return Result.Refused<JsonNode>(piece.Fault);
            }

            if (!piece.Value.IsPositive || !pieces.Add(piece.Value))
            {
                return Result.Refused<JsonNode>($"{FieldType.Shown(word)} {(piece.Value.IsPositive ? "stands there twice; write it once." : "is no value of a note or coin; write one above zero.")}");
            }
        }

        return Result.Of<JsonNode>(new JsonArray([.. pieces.Reverse().Select(piece => Text(JsonWriting.PieceText(piece)))]));
    }
}
