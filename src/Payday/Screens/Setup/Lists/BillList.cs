using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What falls due.</summary>
internal sealed record BillList() : SetupList(
    "bills",
    "bill",
    "Bills",
    "What falls due on known dates and is paid from the account.",
    [
        Name,
        new("Amount", FieldPath.Of("amount"), new AmountType(), "What is usually due; the actual amount is confirmed each time."),
        .. ScheduleFields.Of("Falls due"),
        new("Essential", FieldPath.Of("essential"), ChoiceType.YesNo(), "Whether it keeps the household going, like shelter and power: it comes before all else when money is short."),
        new SetupField("Set aside already", FieldPath.Of("setAside"), new AmountType(), "What the account already held for it at the start; empty for nothing.") { Locked = SinceStart }.Optional(),
        Until,
    ])
{
    /// <inheritdoc/>
    public override bool HasEnd => true;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Bill"), new("falls due") { Shrinks = true, MinWidth = 18 }, Report.Amounts("amount"), new("until") { Drops = 1 }];

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(JsonObject item, SetupWork work) =>
        [item["name"]!.ToString(), ScheduleFields.Words(item, work), Amount(item["amount"], work), Shown(item, "Until", work)];

    /// <inheritdoc/>
    public override JsonObject Fresh(SetupWork work) =>
        new() { ["schedule"] = new JsonObject { ["kind"] = "monthly" }, ["shift"] = "none", ["essential"] = true };
}
