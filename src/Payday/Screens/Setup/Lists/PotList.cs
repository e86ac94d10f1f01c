using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What money is for; their order is their rank.</summary>
internal sealed record PotList() : SetupList(
    "pots",
    "pot",
    "Pots",
    "What money is for: everyday spending, a future cost, savings, a reserve. The first is cut last when money is short.",
    PotFields.All)
{
    private const int WidestPurpose = 30;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [new("", Align.Right), Report.Names("Pot"), new("for"), new("held")];

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(JsonObject item, SetupWork work) =>
        [item["rank"]?.ToString() ?? "", item["name"]!.ToString(), TextColumns.Truncate(Purpose(item, work), WidestPurpose), Shown(item, "Held", work)];

    /// <inheritdoc/>
    public override JsonObject Fresh(SetupWork work) => new()
    {
        ["kind"] = "spending",
        ["per"] = "week",
        ["held"] = "cash",
        ["rank"] = work.Items(Key).Select(Rank).DefaultIfEmpty(0).Max() + 1,
    };

    /// <inheritdoc/>
    public override ImmutableArray<(int Index, JsonObject Item)> Ordered(SetupWork work) => [.. base.Ordered(work).OrderBy(pot => Rank(pot.Item))];

    /// <inheritdoc/>
    public override void Exchange(JsonObject household, int one, int other)
    {
        base.Exchange(household, one, other);
        JsonNode first = household[Key]![one]!;
        JsonNode second = household[Key]![other]!;
        (int firstRank, int secondRank) = (Rank((JsonObject)first), Rank((JsonObject)second));
        first["rank"] = secondRank;
        second["rank"] = firstRank;
    }

    private static int Rank(JsonObject pot) =>
        int.TryParse(pot["rank"]?.ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out int rank) ? rank : 0;

    private string Purpose(JsonObject pot, SetupWork work) => pot["kind"]?.ToString() switch
    {
        "spending" => $"{Amount(pot["amount"], work)} a {Shown(pot, "Per", work)}",
        "sinking" => $"{Amount(pot["target"], work)} by {Shown(pot, "By", work)}",
        "ladder" => $"{Shown(pot, "Steps", work)} steps of {Amount(pot["unit"], work)}, {Shown(pot, "Order", work)}",
        _ => $"{Amount(pot["perPayday"], work)} a payday to {Amount(pot["level"], work)}",
    };
}
