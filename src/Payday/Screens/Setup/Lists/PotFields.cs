using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Screens.Setup.Fields;

namespace Payday.Screens.Setup.Lists;

/// <summary>The fields of a pot.</summary>
internal static class PotFields
{
    private const int MostSteps = 1_000;

    /// <summary>The fields: name and kind, those of the kind, then where it is held and how.</summary>
    public static ImmutableArray<SetupField> All { get; } =
    [
        new("Name", FieldPath.Of("name"), new LineType(), "What stands on the envelope, 1 to 60 characters."),
        new("Kind", FieldPath.Of("kind"), ChoiceType.Of(("spending", "spending"), ("sinking", "sinking"), ("ladder", "ladder"), ("reserve", "reserve")), "Spending is used up each period; sinking reaches a target by a date; a ladder saves in steps; a reserve is kept for trouble."),
        new("Amount", FieldPath.Of("amount"), new AmountType(), "What goes in, for each week, payday or month as chosen below.") { Applies = Is("spending") },
        new("Per", FieldPath.Of("per"), ChoiceType.Of(("week", "week"), ("payday", "payday"), ("month", "month"), ("monthSpread", "month, spread")), "A month's amount goes in over its usual paydays, so that an extra payday finds it full; spread, over all of them.") { Applies = Is("spending") },
        new("Target", FieldPath.Of("target"), new AmountType(aboveZero: true), "What must be there by the date.") { Applies = Is("sinking") },
        new("By", FieldPath.Of("by"), new DateType(), "The date by which the target must be there, like 2026-12-01.") { Applies = Is("sinking") },
        .. ScheduleFields.Again("Needed again", "When the target is needed again once it was spent: another year's holiday, the next insurance.", "repeats", "by", Is("sinking")),
        new SetupField("Settled up to", FieldPath.Of("settledTo"), new DateType(), "What was spent up to this day doesn't count as bought: the pot goes on. Empty for nothing.") { Applies = Is("sinking") }.Optional(),
        new SetupField("Finished", FieldPath.Of("finished"), Yes(), "Whether it has done what it was for and gets nothing any more.") { Applies = Is("sinking") }.Optional(),
        new("Unit", FieldPath.Of("unit"), new AmountType(aboveZero: true), "The smallest step, such as 5.") { Applies = Is("ladder") },
        new("Steps", FieldPath.Of("steps"), new CountType(1, MostSteps), "How many steps there are, one a payday.") { Applies = Is("ladder") },
        new("Order", FieldPath.Of("order"), ChoiceType.Of(("rising", "rising"), ("falling", "falling"), ("even", "even")), "Rising saves 1, 2, 3 times the unit and so on; falling the other way round; even the unit each time.") { Applies = Is("ladder") },
        new("Level", FieldPath.Of("level"), new AmountType(aboveZero: true), "Where the reserve is full.") { Applies = Is("reserve") },
        new("Each payday", FieldPath.Of("perPayday"), new AmountType(aboveZero: true), "What a payday adds until it is full.") { Applies = Is("reserve") },
        new("Held", FieldPath.Of("held"), ChoiceType.Of(("cash", "in cash"), ("account", "in the account")), "In notes in an envelope, or as a part of the account."),
        new SetupField("In the wallet", FieldPath.Of("weeks"), SplitOrNot(), "Whether a payday's or month's cash goes in the wallet on the first fill day, or part by part on each.")
        {
            Applies = pot => InCash(pot) && Is("spending")(pot) && pot["per"]?.ToString() != "week",
        }.Optional(),
        new SetupField("Floor", FieldPath.Of("floor"), new AmountType(), "The least that a cut leaves of a fill when money is short; empty for nothing.").Optional(),
        new SetupField("Has already", FieldPath.Of("has"), new AmountType(), "What was in it at the start; empty for nothing.")
        {
            Locked = (work, _) => work.HasHistory ? "It is part of the ledger since a payday was closed, and stays as it is." : null,
        }.Optional(),
        new SetupField("Top note", FieldPath.Of("topNote"), ChoiceType.Note("any"), "The largest note that the pot takes.") { Applies = InCash }.Optional(),
        new SetupField("Small money up to", FieldPath.Of("small", "note"), ChoiceType.Note("none wanted"), "Whether each fill should hold some small notes: the largest note that counts as small.") { Applies = InCash }.Optional(),
        new("Small money, least", FieldPath.Of("small", "atLeast"), new AmountType(aboveZero: true), "The least value wanted in such notes in each fill.")
        {
            Applies = pot => InCash(pot) && pot["small"]?["note"] is not null,
        },
        new SetupField("Left over", FieldPath.Of("leftOver"), new ChoiceType(LeftOver), "What the week-end count proposes for what is left: it stays in the pot, or moves on.")
        {
            Applies = InCash,
            Offers = (pot, choice) => choice.Value is not JsonObject target || target["pot"]?.ToString() is not { } id || id != (pot["id"] ?? pot["name"])?.ToString(),
        }.Optional(),
    ];

    private static ChoiceType SplitOrNot()
    {
        ImmutableArray<Choice> choices = [new("at once", null), new("week by week", JsonValue.Create("split"))];
        return new ChoiceType(_ => choices);
    }

    private static ChoiceType Yes()
    {
        ImmutableArray<Choice> choices = [new("no", null), new("yes", JsonValue.Create(true))];
        return new ChoiceType(_ => choices);
    }

    private static ImmutableArray<Choice> LeftOver(SetupWork work) =>
    [
        new("stays", null),
        new("to the buffer", JsonValue.Create("buffer")),
        .. work.Items("debts").Select(debt => Target("debt", debt)),
        .. work.Items("pots").Select(pot => Target("pot", pot)),
    ];

    private static Choice Target(string list, JsonObject item)
    {
        string name = item["name"]?.ToString() ?? "";
        return new("to " + name, new JsonObject { [list] = item["id"]?.ToString() ?? name });
    }

    private static Func<JsonObject, bool> Is(string kind) => pot => pot["kind"]?.ToString() == kind;

    private static bool InCash(JsonObject pot) => pot["held"]?.ToString() == "cash";
}
