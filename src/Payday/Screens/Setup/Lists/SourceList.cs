using System.Collections.Immutable;
using Members = Payday.Core.Drafts.SourceDraft.Members;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.ItemLines;
using Payday.Reports;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>Who pays, and when.</summary>
internal sealed class SourceList : ListOf<SourceDraft>
{
    private static readonly SetupField<SourceDraft> Until = EndField.Of(Members.Until);

    public SourceList()
        : base(new(HouseholdDraft.Members.Sources, BegunItems.Members.Source, BegunItems.Members.SourceLines,
        [
            SetupFields.Name<SourceDraft>(NameHelp),
            SetupFields.Of("Expected", Members.Expected, new AmountType(), "What usually comes each time; 0 where it can't be foreseen. What really came is entered on the payday."),
            .. ScheduleFields.Of("Comes", Members.Schedule, Members.Shift),
            LaterField.Of(Members.Later),
            Until,
        ]))
    {
    }

    /// <inheritdoc/>
    public override string Noun => "income source";

    /// <inheritdoc/>
    public override string Title => "Income sources";

    /// <inheritdoc/>
    public override string Help => "Who pays, and when. Every date on which at least one pays is a payday.";

    /// <inheritdoc/>
    public override string Instead => "d ends it on a date.";

    /// <inheritdoc/>
    public override bool IsNeeded => true;

    /// <inheritdoc/>
    public override bool HasEnd => true;

    /// <inheritdoc/>
    public override ImmutableArray<TextColumn> Columns => [Report.Names("Who pays"), new("when") { Shrinks = true, MinWidth = 18 }, Report.Amounts("expected"), new("until") { Drops = 1 }];

    /// <inheritdoc/>
    public override string EndOf(int index, SetupFacts facts) => Until.Typed(Item(facts, index), facts);

    /// <inheritdoc/>
    public override string? End(SetupWork work, int index, string text) => FormOf(work, index).Type(Until, text);

    /// <inheritdoc/>
    protected override ImmutableArray<string> Cells(SourceDraft item, SetupFacts facts) =>
        [item.Name!, ScheduleFields.Words(item, Members.Schedule, facts) + LaterField.Next(item.Later, facts), LaterField.Now(item.Expected, item.Later, facts), EndField.Short(item.Until)];

    /// <inheritdoc/>
    public override string LineExample => "Wage 1840 every 2 weeks from 6 Mar";

    /// <inheritdoc/>
    public override string LineExamples => "Wage 1840 every other Friday from 6 Mar, or Pension 640 last working day";

    /// <inheritdoc/>
    public override ItemSection Section => ItemSection.Sources;

    /// <inheritdoc/>
    protected override string Written(SourceDraft item, LineFacts facts) => ItemText.Of(item, facts);

    /// <inheritdoc/>
    protected override Result<SourceDraft> Read(string line, LineFacts facts, SourceDraft fresh) => ItemLine.Source(line, facts)
        .Map(source => fresh with { Name = source.Name, Expected = source.Expected, Later = source.Later, Until = source.Until, Schedule = source.Schedule ?? fresh.Schedule });

    // Pay on a closed day mostly comes early (common practice, no source).
    /// <inheritdoc/>
    protected override SourceDraft Fresh(SetupFacts facts) => new() { Schedule = new() { Kind = ScheduleKind.Monthly }, Shift = Shift.Before };
}
