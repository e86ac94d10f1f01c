using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Routines;

/// <summary>What a bill gives up today of what is set aside for its later dues, because another is due sooner.</summary>
/// <param name="Line">The bill that gives.</param>
/// <param name="Amount">How much, above zero.</param>
/// <param name="To">The name of the bill due before it that gets most today; null where none does.</param>
public sealed record GivenSetAside(SetAsideLine Line, Money Amount, string? To)
{
    /// <summary>All of a step, the largest first.</summary>
    public static IEnumerable<GivenSetAside> Of(BillsStep bills)
    {
        ArgumentNullException.ThrowIfNull(bills);
        var parts = SetAsideParts.Of(bills);
        return bills.SetAsides
            .Select(line => (Line: line, Amount: -parts.Later(line.BillId).SetAside))
            .Where(given => given.Amount.IsPositive)
            .OrderByDescending(given => given.Amount)
            .Select(given => new GivenSetAside(given.Line, given.Amount, Needs(bills, given.Line)));
    }

    private static string? Needs(BillsStep bills, SetAsideLine giver) => bills.SetAsides
        .Where(line => line.BillId != giver.BillId && line.SetAside.IsPositive && Soonest(bills, line) < Soonest(bills, giver, later: true))
        .MaxBy(line => line.SetAside)?.Name;

    private static LocalDate Soonest(BillsStep bills, SetAsideLine line, bool later = false) => bills.Dues
        .Where(due => !later && due.BillId == line.BillId)
        .Select(due => due.Date)
        .Append(line.NextDue ?? LocalDate.MaxIsoValue)
        .Min();
}
