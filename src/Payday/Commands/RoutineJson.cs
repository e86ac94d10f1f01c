using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Json;
using Payday.Reports;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>A routine for scripts.</summary>
internal static class RoutineJson
{
    public static string Of(RoutinePlan plan, bool closed) => JsonSerializer.Serialize(Result(plan, closed), ResultJson.Readable.RoutineResult);

    private static RoutineResult Result(RoutinePlan plan, bool closed)
    {
        Household household = plan.Book.Household;
        Dictionary<BillId, string> bills = household.Bills.ToDictionary(bill => bill.Id, bill => bill.Name);
        return new RoutineResult(
            Iso(plan.Period.First),
            Iso(plan.Period.Last),
            plan.Payday.IsExtra,
            closed,
            plan.Income.CameIn.ToPlain(),
            plan.Income.CarriedOver.ToPlain(),
            plan.Income.Overdraft.Amount.ToPlain(),
            plan.Income.Buffer.Amount.ToPlain(),
            [.. plan.Income.Lines.Select(line => new IncomeResult(line.Name, line.Expected.ToPlain(), line.Amount.ToPlain()))],
            plan.Bills.Total.ToPlain(),
            [.. plan.Bills.Dues.Select(due => new DueResult(due.Name, Iso(due.Date), due.Amount.ToPlain(), due.Paid))],
            [.. plan.Bills.SetAsides.Select(line => new SetAsideForResult(
                bills[line.BillId], line.HeldBefore.ToPlain(), line.SetAside.ToPlain(), BillsReport.Paid(plan.Bills, line).ToPlain(),
                (line.HeldAfter - BillsReport.Paid(plan.Bills, line)).ToPlain()))],
            [.. plan.Bills.Late.Select(SetAsideCommand.Late)],
            plan.Debts.Total.ToPlain(),
            [.. plan.Debts.Rows.Select(row => new DebtRowResult(
                row.Name,
                row.Due is { } due ? Iso(due) : null,
                row.Balance.ToPlain(),
                row.Interest.ToPlain(),
                row.Minimum.ToPlain(),
                row.Payment.ToPlain(),
                row.NewBalance.ToPlain(),
                row.Due is null ? null : row.Paid,
                row.Bought.ToPlain()))],
            plan.Pots.Total.ToPlain(),
            [.. plan.Pots.Rows.Select(row => new PotRowResult(
                row.Pot.Name, row.HasNow.ToPlain(), row.Proposed.ToPlain(), row.Fill.ToPlain(), row.Why, PotQuestion.Word(row)))],
            plan.Surplus.Placed.ToPlain(),
            [.. plan.Surplus.Placements.Select(placement => Placed(household, placement))],
            new NotesSummaryResult(
                plan.Withdrawal.Plan.WithdrawTotal.ToPlain(),
                plan.Withdrawal.Plan.ReusedTotal.ToPlain(),
                plan.Withdrawal.KeptBack.ToPlain(),
                NoteText.Counts(plan.Withdrawal.Plan.Withdraw, household.Currency),
                plan.Withdrawal.Plan.NoteCount,
                plan.Withdrawal.Plan.Proven),
            plan.LeftToPlace.ToPlain(),
            [.. plan.Unpayable.Select(unpaid => new LateResult(ClosingTexts.Name(unpaid.Obligation), Iso(unpaid.Obligation.Due), unpaid.Short.ToPlain()))]);
    }

    private static PlacementResult Placed(Household household, Placement placement) => placement.Target switch
    {
        MoveTarget.ToDebt to => new("debt", household.Debts.Single(debt => debt.Id == to.Id).Name, placement.Amount.ToPlain()),
        MoveTarget.ToBill to => new("bill", household.Bills.Single(bill => bill.Id == to.Id).Name, placement.Amount.ToPlain()),
        MoveTarget.ToPot to => new("pot", household.Pots.Single(pot => pot.Id == to.Id).Name, placement.Amount.ToPlain()),
        _ => new("buffer", "", placement.Amount.ToPlain()),
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
