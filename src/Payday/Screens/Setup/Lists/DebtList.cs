using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What is owed.</summary>
internal sealed record DebtList() : SetupList(
    "debts",
    "debt",
    "Debts",
    "What is owed to lenders: cards, loans, instalments.",
    [
        Name,
        new("Owed", FieldPath.Of("balance"), new AmountType(), "What is owed when it is entered here; from then on the ledger keeps the balance.")
        {
            Applies = debt => debt[Now] is null,
            Locked = (work, debt) => debt["id"] is null ? null : SinceStart(work, debt),
        },
        new("Owed now", FieldPath.Of(Now), new AmountType(), "What is owed today, as the list has it: what it began with, and every payment and interest since.")
        {
            Applies = debt => debt[Now] is not null,
            FormOnly = true,
            Locked = (_, _) => "The ledger keeps what is owed: payments and interest change it.",
        },
        new("Owed at first", FieldPath.Of("balance"), new AmountType(), "What was owed when it was entered here; the ledger begins with it.")
        {
            Applies = debt => debt[Now] is not null,
            Locked = SinceStart,
            Then = debt => debt[Now] = debt["balance"]?.DeepClone(),
        },
        new("Yearly rate, %", FieldPath.Of("rate"), new PercentType(1_000), "The yearly interest rate from the lender's statement, such as 19 for 19 %; 0 where there is none."),
        new("Minimum is", FieldPath.Of("minimum", "kind"), ChoiceType.Of((FixedKind, "always the same"), (PartKind, "a part of what is owed")), "How the lender works out the least that must be paid each month.") { FormOnly = true },
        new("Each month", FieldPath.Of("minimum", "fixed"), new AmountType(), "The least that must be paid each month.") { Applies = debt => Is(debt, FixedKind) },
        new("Part, %", FieldPath.Of("minimum", "percent"), new PercentType(100), "Which part of what is owed must at least be paid, such as 2.") { Applies = debt => Is(debt, PartKind) },
        new("But at least", FieldPath.Of("minimum", "floor"), new AmountType(), "The lowest that the part may come to, such as 25; 0 for none.") { Applies = debt => Is(debt, PartKind) },
        new("Due on day", FieldPath.Of("due"), new DayType(), "The day of the month on which the minimum is due: 1 to 31, last, last working day, or such as 2nd Friday."),
    ])
{
    private const string Now = "owedNow";
    private const string FixedKind = "fixed";
    private const string PartKind = "percent";

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Debt"), Report.Amounts("owed"), new("rate", Align.Right), Report.Amounts("minimum"), new("due on")];

    /// <inheritdoc/>
    public override ImmutableArray<string> Cells(JsonObject item, SetupWork work)
    {
        JsonObject debt = Opened((JsonObject)item.DeepClone(), work);
        string minimum = Is(debt, FixedKind) ? Shown(debt, "Each month", work) : Shown(debt, "Part, %", work);
        return [item["name"]!.ToString(), Amount(work.Owed(item), work), Shown(debt, "Yearly rate, %", work), minimum, Shown(debt, "Due on day", work)];
    }

    /// <inheritdoc/>
    public override JsonObject Fresh(SetupWork work) => new() { ["minimum"] = new JsonObject { ["kind"] = FixedKind } };

    /// <inheritdoc/>
    public override JsonObject Opened(JsonObject item, SetupWork work)
    {
        if (!work.TakesParts)
        {
            item[Now] = work.Owed(item);
        }

        FieldPath.Of("minimum", "kind").Put(item, item["minimum"]?["percent"] is null ? FixedKind : PartKind);
        return item;
    }

    private static bool Is(JsonObject debt, string kind) => debt["minimum"]?["kind"]?.ToString() == kind;
}
