using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Slips;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Step 7: the papers as they will print, and the closing.</summary>
internal sealed class SlipView(RoutineWork work) : StepView(work)
{
    private const string NoChange = "Nothing is changed here: c closes the payday, Left leads back to the steps before.";

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Slip;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Confirm.Does("close payday", "Close the payday: shows what will be written, and asks.", () => new Way.To(new CloseScreen(Work))),
        Letters.View.Does("slip and sheet", "The slip and the filling sheet, to print or to save as PDF.", () => new Way.Visit(new Goal.Papers(Work.Session, Record))),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Slip", "notes to fetch, by value: the paper for the teller."),
        ("Filling sheet", "which notes go in which pot for which week."),
        ("Closed payday", "a completed routine; its lines stand in the ledger."),
    ];

    /// <inheritdoc/>
    public override int DetailLines => 0;

    /// <inheritdoc/>
    public override Said Note => Said.Quiet("c closes the payday; until then everything can still be changed.");

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows =>
    [
        .. SlipLayout.Lay(BankPapers.Slip(Plan.Book.Household, Record), SlipLayout.UsualWidth).Lines.Select(line => new StepRow([line]) { Rule = RuleTexts.Slip, NoEdit = NoChange, NoTick = NoChange }),
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => [new("The slip as it prints")];

    private ClosedPayday Record => ClosingRecord.AsPlanned(Plan);
}
