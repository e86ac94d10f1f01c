using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>Step 1: what came in.</summary>
internal sealed class IncomeView(RoutineWork work) : StepView(work)
{
    private const int LongestName = 60;
    private readonly PerPlan<ImmutableArray<OddPeriod>> odd = new(OddPeriods.Of);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Income;

    /// <inheritdoc/>
    public override IReadOnlyList<Binding> Keys =>
    [
        Letters.Add.Does("add", "Add income that no source pays, as Name=AMOUNT; zero removes it again.", () => new Way.Edit(OneOff())),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Carried over", "money that was still waiting for a purpose from before."),
        ("One-off", "income that no source pays regularly."),
        ("Overdraft", "what the account is below zero beside what is set aside in it; what comes in pays it off first."),
        ("From the buffer", "money without a purpose in the account; it helps by itself down to what the buffer keeps."),
    ];

    /// <inheritdoc/>
    public override Said Note => new(NoteText, Plan.Income.Buffer.IsAsked ? Ink.Alert : Ink.Quiet);

    private string NoteText => string.Join(
        ' ',
        odd.Of(Plan).Select(OddPeriodTexts.Of)
            .Prepend(Plan.Income.Buffer.IsAsked ? $"! {Shown(Plan.Income.Buffer.Short)} is missing, and the buffer has {Shown(Plan.Income.Buffer.Has)}: say what it gives." : "")
            .Prepend(Plan.Income.CarriedOver.IsZero ? "" : $"{Shown(Plan.Income.CarriedOver)} is carried over from before.")
            .Where(sentence => sentence.Length > 0));

    /// <inheritdoc/>
    public override ImmutableArray<StepRow> Rows =>
        [.. Plan.Income.Lines.Select(Row), .. Plan.Income.Overdraft.Owed.IsZero ? ImmutableArray<StepRow>.Empty : [OverdraftRow(Plan.Income.Overdraft)], .. Plan.Income.Buffer is { Has.IsZero: true, Amount.IsZero: true } ? ImmutableArray<StepRow>.Empty : [BufferRow(Plan.Income.Buffer)]];

    /// <inheritdoc/>
    protected override ImmutableArray<TextColumn> Columns => IncomeTable.Columns;

    private StepRow Row(IncomeLine line) => new(IncomeTable.Cells(line, Style))
    {
        Rule = RuleTexts.Income,
        Sign = line.Changed ? '*' : ' ',
        Detail = [line.Changed && line.SourceId is not null ? $"{line.Name}: {Difference(line)}" : line.Name],
        NoTick = "A one-off has no proposal to go back to; with 0 it goes.",
        Edit = Amount($"{line.Name} came in", line.Amount, (draft, amount) => line.SourceId is { } id
            ? draft with { Incomes = draft.Incomes.SetItem(id, amount) }
            : draft with { OneOffs = amount.IsZero ? draft.OneOffs.Remove(line.Name) : draft.OneOffs.SetItem(line.Name, amount) }),
        Tick = line.SourceId is { } source ? () => Work.Decide(draft => draft with { Incomes = draft.Incomes.Remove(source) }) : null,
    };

    private StepRow OverdraftRow(OverdraftPayoff overdraft) => new(["Pays off the overdraft", $"of {Shown(overdraft.Owed)}", Marked(-overdraft.Amount, overdraft.Changed)])
    {
        Rule = RuleTexts.Overdraft,
        Sign = overdraft.Changed ? '*' : ' ',
        Detail =
        [
            overdraft.Rest.IsZero ? "Then the account is no longer below zero." : $"{Shown(overdraft.Rest)} of the overdraft is left then.",
            Cautions.Overdraft,
        ],
        Edit = new("Pays off the overdraft", Shown(overdraft.Amount), text => PayOff(text, overdraft)),
        Tick = () => Work.Decide(draft => draft with { ToOverdraft = null }),
    };

    private string? PayOff(string text, OverdraftPayoff overdraft)
    {
        Result<Money> amount = Money.ParseSum(text, overdraft.Owed.Currency, Style);
        return !amount.Ok ? FaultTexts.Of(amount.Fault, Style)
            : amount.Value.IsNegative ? "An amount below zero has no place here."
            : amount.Value > overdraft.Owed ? $"The overdraft is {Shown(overdraft.Owed)}."
            : amount.Value > overdraft.Proposed ? $"{Shown(overdraft.Proposed)} came in, so no more of it is paid off today."
            : Work.Decide(draft => draft with { ToOverdraft = amount.Value });
    }

    private StepRow BufferRow(BufferHelp buffer) => new(["From the buffer", $"has {Shown(buffer.Has)}", Marked(buffer.Amount, buffer.Changed)])
    {
        Rule = RuleTexts.Buffer,
        Sign = buffer.IsAsked ? '!' : buffer.Changed ? '*' : ' ',
        Ink = buffer.IsAsked ? Ink.Alert : Ink.Plain,
        Detail =
        [
            buffer.Short.IsPositive
                ? $"{Shown(buffer.Short)} is missing today before anything is cut; the buffer would keep {Shown(buffer.Has - buffer.Amount)}."
                : $"Nothing is missing today; the buffer would keep {Shown(buffer.Has - buffer.Amount)}.",
            buffer.Keeps is { } keeps ? $"It helps by itself down to {Shown(keeps)}." : "What it keeps isn't set, so it gives only what you say.",
        ],
        Edit = new("The buffer gives", Shown(buffer.Amount), text => TakeFromBuffer(text, buffer)),
        Tick = () => Work.Decide(draft => draft with { FromBuffer = null }),
    };

    private string? TakeFromBuffer(string text, BufferHelp buffer)
    {
        Result<Money> amount = Money.ParseSum(text, buffer.Has.Currency, Style);
        return !amount.Ok ? FaultTexts.Of(amount.Fault, Style)
            : amount.Value.IsNegative ? "An amount below zero has no place here."
            : amount.Value > buffer.Has ? $"The buffer has {Shown(buffer.Has)}."
            : Work.Decide(draft => draft with { FromBuffer = amount.Value });
    }

    private string Difference(IncomeLine line) => line.Amount >= line.Expected
        ? $"{Shown(line.Amount - line.Expected)} more than expected"
        : $"{Shown(line.Expected - line.Amount)} less than expected";

    private CellEdit OneOff() => new("One-off, Name=AMOUNT", "", text =>
    {
        int at = text.LastIndexOf('=');
        string name = at < 0 ? "" : CleanText.OneLine(text[..at]).Trim();
        if (name.Length == 0)
        {
            return "Write it like Gift=50.";
        }

        if (name.Length > LongestName)
        {
            return $"The name has {name.Length} characters; shorten it to {LongestName}.";
        }

        Result<Money> amount = Money.ParseSum(text[(at + 1)..], Plan.Income.CameIn.Currency, Style);
        if (!amount.Ok)
        {
            return FaultTexts.Of(amount.Fault, Style);
        }

        return amount.Value.IsNegative
            ? "An income can't be below zero."
            : Work.Decide(draft => draft with { OneOffs = draft.OneOffs.SetItem(name, amount.Value) });
    });
}
