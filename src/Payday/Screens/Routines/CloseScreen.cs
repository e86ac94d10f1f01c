using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Routines;

/// <summary>What closing the payday will write, and the question whether to.</summary>
internal sealed class CloseScreen : PageScreen
{
    private readonly RoutineWork work;
    private readonly Result<Book> closed;

    /// <summary>Looks at what would be written; nothing is yet.</summary>
    public CloseScreen(RoutineWork work)
    {
        this.work = work;
        closed = Closing.Of(work.Plan);
    }

    /// <inheritdoc/>
    public override string Title => "Close the payday";

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(work.Plan.Period.First);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => closed.Ok
        ? [new(Key.Enter, "Enter", "close it", "Write all of this to the ledger.", Close)]
        : [];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        if (!closed.Ok)
        {
            return Said.Lines([Said.Alert(FaultTexts.Of(closed.Faults, work.Session.Style))], width);
        }

        RoutinePlan plan = work.Plan;
        NumberStyle style = work.Session.Style;
        Core.Ledgers.Balances after = closed.Value.Ledger.Balances;
        int days = NodaTime.Period.DaysBetween(work.Session.Today, plan.Period.First);
        Said[] lines =
        [
            .. days > 1 ? [Said.Alert($"This payday is {"day".ToQuantity(days)} off: close it once the money is there."), ""] : Array.Empty<Said>(),
            $"{plan.Income.CameIn.ToString(style)} came in.",
            .. plan.Income.Overdraft is { Owed.IsPositive: true } overdraft ? [$"{overdraft.Amount.ToString(style)} pays off the overdraft{(overdraft.Rest.IsZero ? "" : $", of which {overdraft.Rest.ToString(style)} is left")}."] : Array.Empty<Said>(),
            .. plan.Income.Buffer.Amount.IsPositive ? [$"{plan.Income.Buffer.Amount.ToString(style)} comes from the buffer, which keeps {(plan.Income.Buffer.Has - plan.Income.Buffer.Amount).ToString(style)}."] : Array.Empty<Said>(),
            $"{plan.Bills.Total.ToString(style)} is set aside for bills; {plan.Bills.Dues.Count(due => due.Paid)} of {plan.Bills.Dues.Length} due are marked paid.",
            $"{plan.Debts.Total.ToString(style)} goes to debt minimums; {plan.Debts.Rows.Count(row => row.Paid)} of {plan.Debts.Rows.Count(row => row.Due is not null)} due are marked paid.",
            $"{plan.Pots.Total.ToString(style)} goes in pots.",
            .. Placed(plan, style).Select(text => (Said)text),
            $"{plan.Withdrawal.Plan.WithdrawTotal.ToString(style)} is to be withdrawn, {"note".ToQuantity(plan.Withdrawal.Plan.Withdraw.Pieces)}.",
            .. ReusedNotes.ToBuffer(closed.Value.Ledger.Since(plan.Book.Ledger)) is { IsPositive: true } reused
                ? [$"{reused.ToString(style)} of loose notes at home goes in pots; as much of their money in the account goes to the buffer."]
                : Array.Empty<Said>(),
            "",
            $"Afterwards {after.In(Core.Ledgers.Place.Account).ToString(style)} is in the account and {after.In(Core.Ledgers.Place.Cash).ToString(style)} in cash.",
            $"{"ledger line".ToQuantity(closed.Value.Ledger.Since(plan.Book.Ledger).Count())} will be written. They stay: a mistake is undone by its reverse.",
            "",
            Cautions.Advice,
            .. plan.Income.Overdraft.Owed.IsPositive ? [Cautions.Overdraft] : Array.Empty<Said>(),
            Cautions.Cash,
        ];
        return Said.Lines(lines, width);
    }

    // An extra payment is no due that anything reminds of: it is said here who makes it.
    private static IEnumerable<string> Placed(RoutinePlan plan, NumberStyle style)
    {
        ImmutableArray<Placement> placements = plan.Surplus.Placements;
        string Name(Placement one) => CleanText.OneLine(one.Target.NameIn(plan.Book.Household));
        if (!placements.IsEmpty)
        {
            yield return $"{plan.Surplus.Placed.ToString(style)} of surplus goes to {(placements.Length == 1 ? Name(placements[0]) : placements.Select(one => $"{Name(one)} ({one.Amount.ToString(style)})").Humanize())}.";
        }

        foreach (Placement one in placements.Where(one => one.Target is MoveTarget.ToDebt))
        {
            yield return $"Pay the {one.Amount.ToString(style)} to {Name(one)} yourself: the account here counts them as paid.";
        }
    }

    private Way Close()
    {
        work.Session.Take(closed.Value!);
        return new Way.Home($"The payday is closed. v shows its slip and sheet. {work.Session.News()}".TrimEnd());
    }
}
