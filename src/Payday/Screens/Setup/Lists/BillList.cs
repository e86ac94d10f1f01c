using System.Collections.Immutable;
using Members = Payday.Core.Drafts.BillDraft.Members;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>What falls due.</summary>
internal sealed class BillList : ListOf<BillDraft>
{
    private static readonly SetupField<BillDraft> Until = EndField.Of(Members.Until);

    public BillList()
        : base(new(HouseholdDraft.Members.Bills, BegunItems.Members.Bill, BegunItems.Members.BillLines,
        [
            SetupFields.Name<BillDraft>(NameHelp),
            SetupFields.Of("Amount", Members.Amount, new AmountType(), "What is usually due; the actual amount is confirmed each time."),
            .. ScheduleFields.Of("Falls due", Members.Schedule, Members.Shift),
            SetupFields.Of("Essential", Members.Essential, ChoiceTypes.Of((true, "yes"), (false, "no")), "Whether it keeps the household going, like shelter and power: it comes before all else when money is short."),
            (SetupFields.Of("Set aside already", Members.SetAside, new AmountType(), "What was set aside for it in the account at the start; empty for nothing.") with { Locked = StartLock.SinceStart }).Optional(),
            LaterField.Of(Members.Later),
            Until,
        ]))
    {
    }

    /// <inheritdoc/>
    public override string Noun => "bill";

    /// <inheritdoc/>
    public override string Title => "Bills";

    /// <inheritdoc/>
    public override string Help => "What falls due on known dates and is paid from the account.";

    /// <inheritdoc/>
    public override string Instead => "d ends it on a date.";

    /// <inheritdoc/>
    public override bool HasEnd => true;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Bill"), new("falls due") { Shrinks = true, MinWidth = 18 }, Report.Amounts("amount"), new("until") { Drops = 1 }];

    /// <inheritdoc/>
    public override string EndOf(int index, SetupFacts facts) => Until.Typed(Item(facts, index), facts);

    /// <inheritdoc/>
    public override string? End(SetupWork work, int index, string text) => FormOf(work, index).Type(Until, text);

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(BillDraft item, SetupFacts facts) =>
        [item.Name!, ScheduleFields.Words(item, Members.Schedule, facts) + LaterField.Next(item.Later, facts), LaterField.Now(item.Amount, item.Later, facts), EndField.Short(item.Until)];

    /// <inheritdoc/>
    public override string LineExample => "Rent 1450 1st";

    /// <inheritdoc/>
    public override string LineExamples => "Water 165 every 3 months from 15 May, or Licence 132 yearly from 2 Feb";

    /// <inheritdoc/>
    public override ItemSection Section => ItemSection.Bills;

    /// <inheritdoc/>
    protected override string Written(BillDraft item, LineFacts facts) => ItemText.Of(item, facts);

    /// <inheritdoc/>
    protected override Result<BillDraft> Read(string line, LineFacts facts, BillDraft fresh) => ItemLine.Bill(line, facts)
        .Map(bill => fresh with { Name = bill.Name, Amount = bill.Amount, Later = bill.Later, Until = bill.Until, SetAside = bill.SetAside, Schedule = bill.Schedule ?? fresh.Schedule });

    /// <inheritdoc/>
    protected override BillDraft Fresh(SetupFacts facts) => new() { Schedule = new() { Kind = ScheduleKind.Monthly }, Shift = Shift.None, Essential = true };
}
