using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>Who pays, and when.</summary>
internal sealed record SourceList() : SetupList(
    "sources",
    "income source",
    "Income sources",
    "Who pays, and when. Every date on which at least one pays is a payday.",
    [
        Name,
        new("Expected", FieldPath.Of("expected"), new AmountType(), "What usually comes each time; 0 where it can't be foreseen. What really came is entered on the payday."),
        .. ScheduleFields.Of("Comes"),
        Until,
    ])
{
    /// <inheritdoc/>
    public override bool HasEnd => true;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Who pays"), new("when") { Shrinks = true, MinWidth = 18 }, Report.Amounts("expected"), new("until") { Drops = 1 }];

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(JsonObject item, SetupWork work) =>
        [item["name"]!.ToString(), ScheduleFields.Words(item, work), Amount(item["expected"], work), Shown(item, "Until", work)];

    // Pay on a closed day mostly comes early (common practice, no source).
    /// <inheritdoc/>
    public override JsonObject Fresh(SetupWork work) => new() { ["schedule"] = new JsonObject { ["kind"] = "monthly" }, ["shift"] = "before" };
}
