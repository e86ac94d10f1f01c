using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>The cash pots in notes.</summary>
internal static class WithdrawalReport
{
    /// <summary>Step 6 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style)
    {
        WithdrawalStep step = plan.Withdrawal;
        ImmutableArray<long> notes = [.. step.Plan.Parts.SelectMany(part => part.Notes.Values).Distinct().OrderDescending()];
        string from = plan.Draft.BankFor(plan.Book.Household.Settings.Bank) is CashSource.Machine ? "from a machine" : "from a teller";
        string reused = step.Plan.ReusedTotal.IsZero ? "" : $", {step.Plan.ReusedTotal.ToString(style)} reused";
        string best = step.Plan.Proven ? "; proven fewest notes" : "; not proven to be the fewest notes";
        if (step.Pots.IsEmpty)
        {
            return [.. Report.Heading("6 Withdrawal", from), "No cash is needed."];
        }

        return
        [
            .. Report.Heading("6 Withdrawal", from),
            .. Report.Table(
                style,
                [Report.Names("Pot"), new("week of"), .. notes.Select(note => new TextColumn(NoteText.Value(note, step.Plan.Currency, style), Align.Right)), Report.Amounts("amount"), Report.Amounts("not in notes")],
                step.Pots.SelectMany(row => Rows(row, notes, style))),
            .. Report.Prose($"{step.Plan.WithdrawTotal.ToString(style)} withdrawn ({"note".ToQuantity(step.Plan.Withdraw.Pieces)}){reused}, {step.KeptBack.ToString(style)} not in notes{best}."),
            .. NotInNotesText.First(plan, style) is { Length: > 0 } why ? Report.Prose(why) : [],
            .. WithdrawalRoom.Of(plan) is { IsTooLittle: true } room ? Report.Prose("! " + ClosingTexts.Of(new ClosingFault.AccountHasLess(room.Has, room.Asked), style)) : [],
            .. step.Plan.Faults.SelectMany(fault => Report.Prose("! " + NoteTexts.Of(fault, style))),
        ];
    }

    private static IEnumerable<ImmutableArray<string>> Rows(CashPotRow row, ImmutableArray<long> notes, NumberStyle style) =>
        row.Weeks.Select((week, i) => ImmutableArray.Create<string>(
        [
            i == 0 ? row.Pot.Name : "",
            week.Week is { } date ? DateText.Short(date) : "",
            .. notes.Select(note => week.Notes[note] is > 0 and int count ? count.ToString(System.Globalization.CultureInfo.InvariantCulture) : "."),
            week.Amount.ToString(style),
            i == 0 && !row.KeptBack.IsZero ? row.KeptBack.ToString(style) : "",
        ]));
}
