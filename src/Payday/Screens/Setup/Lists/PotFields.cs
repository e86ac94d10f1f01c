using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.Pots;
using Payday.Screens.Setup.Fields;
using Members = Payday.Core.Drafts.PotDraft.Members;
using Small = Payday.Core.Drafts.SmallMoneyDraft.Members;

namespace Payday.Screens.Setup.Lists;

/// <summary>The fields of a pot.</summary>
internal static class PotFields
{
    /// <summary>The fields: name and kind, those of the kind, then where it is held and how.</summary>
    public static ImmutableArray<SetupField<PotDraft>> All { get; } =
    [
        SetupFields.Name<PotDraft>($"What stands on the envelope, 1 to {HouseholdLimits.LongestName} characters."),
        SetupFields.Of("Kind", Members.Kind, ChoiceTypes.Of((PotUse.Spending, "spending"), (PotUse.Sinking, "sinking"), (PotUse.Ladder, "ladder"), (PotUse.Reserve, "reserve")), "Spending is used up each period; sinking reaches a target by a date; a ladder saves in steps; a reserve is kept for trouble."),
        SetupFields.Of("Amount", Members.Amount, new AmountType(), "What goes in, for each week, payday or month as chosen below."),
        Per,
        SetupFields.Of("Target", Members.Target, new AmountType(), "What must be there by the date."),
        By,
        .. ScheduleFields.Again("Needed again", "When the target is needed again once it was spent: another year's holiday, the next insurance.", Members.Repeats, Members.By),
        SetupFields.Of("Settled up to", Members.SettledTo, new DateType(), "What was spent up to this day doesn't count as bought: the pot goes on. Empty for nothing.").Optional(),
        SetupFields.Of("Finished", Members.Finished, ChoiceTypes.OneOrNone("no", true, "yes"), "Whether it has done what it was for and gets nothing any more.").Optional(),
        SetupFields.Of("Unit", Members.Unit, new AmountType(), "The smallest step, such as 5."),
        Steps,
        Order,
        SetupFields.Of("Full at", Members.Level, new AmountType(), "What the reserve has when it is full."),
        SetupFields.Of("Each payday", Members.PerPayday, new AmountType(), "What a payday adds until it is full."),
        Held,
        (SetupFields.Of("In the wallet", Members.SplitsOverWeeks, ChoiceTypes.OneOrNone("at once", true, "week by week"), "Whether a payday's or month's cash goes in the wallet on the first fill day, or part by part on each.") with
        {
            Applies = (pot, _) => InCash(pot) && pot.Kind == PotUse.Spending && pot.Per != FillPer.Week,
        }).Optional(),
        LaterField.Of(Members.Later) with { Applies = (pot, _) => pot.Kind is PotUse.Spending or PotUse.Reserve },
        LaterField.Of(Members.Later) with
        {
            Applies = (pot, _) => pot.Kind == PotUse.Sinking,
            Help = "What must be there from a date on, like 720 from 1 Jan 2027: the target that holds on the date by which it must be there. Empty while it stays as it is.",
        },
        SetupFields.Of("At least", Members.Floor, new AmountType(), "What a cut leaves of a fill when money is short; empty for nothing.").Optional(),
        (SetupFields.Of("Has already", Members.Has, new AmountType(), "What was in it at the start; empty for nothing.") with { Locked = StartLock.SinceStart }).Optional(),
        (SetupFields.Of("Top note", Members.TopNote, ChoiceTypes.Note("any"), "The largest note that the pot takes.") with { Applies = (pot, _) => InCash(pot) }).Optional(),
        (SetupFields.Of("Small money up to", DraftPath.To(Members.Small, Small.Note), ChoiceTypes.Note("none wanted"), "Whether each fill should hold some small notes: the largest note that counts as small.") with
        {
            Applies = (pot, _) => InCash(pot),
        }).Optional(),
        SetupFields.Of("Small money, least", DraftPath.To(Members.Small, Small.AtLeast), new AmountType(), "The least value wanted in such notes in each fill.") with
        {
            Applies = (pot, _) => InCash(pot) && pot.Small?.Note is not null,
        },
        (SetupFields.Of("Left over", Members.LeftOver, new ChoiceType<LeftOverDraft?>(LeftOver), "What the week-end count proposes for what is left: it stays in the pot, or goes to another, a debt or the account.") with
        {
            Applies = (pot, _) => InCash(pot),
            Offers = (pot, left) => left?.Pot is not { } named || named != (pot.Id ?? pot.Name),
        }).Optional(),
    ];

    /// <summary>What a spending amount is for.</summary>
    public static SetupField<PotDraft> Per => SetupFields.Of("Per", Members.Per, ChoiceTypes.Of((FillPer.Week, "week"), (FillPer.Payday, "payday"), (FillPer.Month, "month"), (FillPer.MonthSpread, "month, spread")), "A month's amount goes in over its usual paydays, so that an extra payday finds it full; spread, over all of them.");

    /// <summary>By when a target must be there.</summary>
    public static SetupField<PotDraft> By => SetupFields.Of("By", Members.By, new DateType(), "The date by which the target must be there, like 2026-12-01.");

    /// <summary>How many steps a ladder has.</summary>
    public static SetupField<PotDraft> Steps => SetupFields.Of("Steps", Members.Steps, new CountType(1, HouseholdLimits.MostSteps), "How many steps there are, one a payday.");

    /// <summary>The order of a ladder's steps.</summary>
    public static SetupField<PotDraft> Order => SetupFields.Of("Order", Members.Order, ChoiceTypes.Of((LadderOrder.Rising, "rising"), (LadderOrder.Falling, "falling"), (LadderOrder.Even, "even")), "Rising saves 1, 2, 3 times the unit and so on; falling the other way round; even the unit each time.");

    /// <summary>Where it is held.</summary>
    public static SetupField<PotDraft> Held => SetupFields.Of("Where", Members.Place, ChoiceTypes.Of((Core.Ledgers.Place.Cash, "in cash"), (Core.Ledgers.Place.Account, "in the account")), "In notes in an envelope, or as a part of the account.");

    private static ImmutableArray<Choice<LeftOverDraft?>> LeftOver(SetupFacts facts) =>
    [
        new("stays", null),
        new("to the buffer", new LeftOverDraft { To = LeftOverTo.Buffer }),
        .. (facts.Draft.Debts ?? []).Select(debt => new Choice<LeftOverDraft?>("to " + debt.Name, new() { To = LeftOverTo.Debt, Debt = debt.Id ?? debt.Name })),
        .. (facts.Draft.Pots ?? []).Select(pot => new Choice<LeftOverDraft?>("to " + pot.Name, new() { To = LeftOverTo.Pot, Pot = pot.Id ?? pot.Name })),
    ];

    private static bool InCash(PotDraft pot) => pot.Place == Core.Ledgers.Place.Cash;
}
