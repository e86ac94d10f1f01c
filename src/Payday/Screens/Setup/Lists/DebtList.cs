using System.Collections.Immutable;
using Members = Payday.Core.Drafts.DebtDraft.Members;
using Minimum = Payday.Core.Drafts.MinimumDraft.Members;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What is owed.</summary>
internal sealed class DebtList : ListOf<DebtDraft>
{
    private static readonly SetupField<DebtDraft> Rate = SetupFields.Of(
        "Yearly rate, %", Members.Rate, new PercentType(), "The yearly interest rate from the lender's statement, such as 19 for 19 %; 0 where there is none.");

    private static readonly SetupField<DebtDraft> Fixed = SetupFields.Of(
        "Each time", DraftPath.To(Members.Minimum, Minimum.Fixed), new AmountType(), "The least that must be paid each time.");

    private static readonly SetupField<DebtDraft> Part = SetupFields.Of(
        "Part, %", DraftPath.To(Members.Minimum, Minimum.Percent), new PercentType(), "Which part of what is owed must at least be paid, such as 2.");

    private static readonly SetupField<DebtDraft> Floor = SetupFields.Of(
        "But at least", DraftPath.To(Members.Minimum, Minimum.Floor), new AmountType(), "The lowest that the part may come to, such as 25; 0 for none.");

    private static readonly SetupField<DebtDraft> Due = SetupFields.Of(
        "Due on day", Members.Due, new DayType(), "The day of the month on which the minimum is due: 1 to 31, last, last working day, or such as 2nd Friday.");

    public DebtList()
        : base(new(HouseholdDraft.Members.Debts, BegunItems.Members.Debt, BegunItems.Members.DebtLines,
        [
            SetupFields.Name<DebtDraft>(NameHelp),
            SetupFields.Of("Owed", Members.Balance, new AmountType(), "What is owed when it is entered here; from then on the ledger keeps the balance.") with
            {
                Applies = (debt, facts) => !IsInLedger(debt, facts),
            },
            new ReadField<DebtDraft>((debt, facts) => Amount(facts.Owed(debt), facts))
            {
                Label = "Owed now",
                Help = "What is owed today, as the list has it: what it began with, and every payment and interest since.",
                Place = DraftPlace.Whole,
                Applies = IsInLedger,
                Locked = (_, _) => "The ledger keeps what is owed: payments and interest change it.",
            },
            SetupFields.Of("Owed at first", Members.Balance, new AmountType(), "What was owed when it was entered here; the ledger begins with it.") with
            {
                Applies = IsInLedger,
                Locked = StartLock.SinceStart,
            },
            Rate,
            SetupFields.Of("Minimum is", DraftPath.To(Members.Minimum, Minimum.Kind), ChoiceTypes.Of((MinimumKind.Fixed, "always the same"), (MinimumKind.Part, "a part of what is owed")), "How the lender works out the least that must be paid each month."),
            Fixed,
            Part,
            SetupFields.Of("And interest", DraftPath.To(Members.Minimum, Minimum.PlusInterest), ChoiceTypes.Of((false, "no, the part alone"), (true, "yes, on top of the part")), "Whether the lender asks for the month's interest on top of the part.").Optional(),
            Floor,
            .. ScheduleFields.OrDay("Minimum is due", Members.Schedule, Members.Due, Due),
        ]))
    {
    }

    /// <inheritdoc/>
    public override string Noun => "debt";

    /// <inheritdoc/>
    public override string Title => "Debts";

    /// <inheritdoc/>
    public override string Help => "What is owed to lenders: cards, loans, instalments.";

    /// <inheritdoc/>
    public override string Instead => "It asks for nothing once it is paid.";

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Debt"), Report.Amounts("owed"), new("rate", Align.Right), Report.Amounts("minimum"), Report.Amounts("at least"), new("due on") { Shrinks = true, MinWidth = 8 }];

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(DebtDraft item, SetupFacts facts) =>
    [
        item.Name!,
        Amount(facts.Owed(item), facts),
        Rate.Show(item, facts),
        item.Minimum?.Kind == MinimumKind.Fixed ? Fixed.Show(item, facts) : Part.Show(item, facts),
        item.Minimum?.Kind == MinimumKind.Part ? Floor.Show(item, facts) : "",
        item.Schedule is null ? Due.Show(item, facts) : ScheduleFields.Words(item, Members.Schedule, facts),
    ];

    /// <inheritdoc/>
    public override string LineExample => "Car loan 6300 at 6.49% min 214.60 18th";

    /// <inheritdoc/>
    public override string LineExamples => "Card 1846 at 23.5% min 2% or 25 on the 12th";

    /// <inheritdoc/>
    public override ItemSection Section => ItemSection.Debts;

    /// <inheritdoc/>
    protected override string Written(DebtDraft item, LineFacts facts) => ItemText.Of(item, facts);

    /// <inheritdoc/>
    protected override Result<DebtDraft> Read(string line, LineFacts facts, DebtDraft fresh) => ItemLine.Debt(line, facts)
        .Map(debt => fresh with { Name = debt.Name, Balance = debt.Balance, Rate = debt.Rate, Minimum = debt.Minimum ?? fresh.Minimum, Due = debt.Due, Schedule = debt.Schedule });

    /// <inheritdoc/>
    protected override DebtDraft Fresh(SetupFacts facts) => new() { Minimum = new() { Kind = MinimumKind.Fixed } };

    private static bool IsInLedger(DebtDraft debt, SetupFacts facts) => debt.Id is not null && !facts.TakesParts;
}
