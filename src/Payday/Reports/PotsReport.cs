using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Pots and their fills.</summary>
internal static class PotsReport
{
    /// <summary>Step 4 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Heading("4 Pots"),
        .. Report.Table(
            style,
            [
                Report.Names("Pot"), new("held"), Report.Amounts("has now"), Report.Amounts("proposed"),
                Report.Amounts("fill"), new("why"),
            ],
            plan.Pots.Rows.Select(row => ImmutableArray.Create(
                row.Pot.Name,
                Place(row.Pot),
                row.HasNow.ToString(style),
                row.Proposed.ToString(style),
                Report.Marked(row.Fill.ToString(style), row.Changed),
                row.Why)),
            [["Filled", "", "", "", plan.Pots.Total.ToString(style), ""]]),
        .. plan.Pots.Cut.IsPositive
            ? [$"! It doesn't fit: the proposals are {plan.Pots.Cut.ToString(style)} less than the pots ask for."]
            : Array.Empty<string>(),
    ];

    /// <summary>Where a pot is held, in a word.</summary>
    public static string Place(Pot pot) => pot.Held == Held.InCash ? "cash" : "account";

    /// <summary>What a pot has, wherever it is.</summary>
    public static Money HasNow(Balances balances, Pot pot) =>
        balances[LedgerEnd.InAccount(Job.Pot(pot.Id))] + balances[LedgerEnd.InCash(Job.Pot(pot.Id))] + balances[LedgerEnd.InAccount(Job.KeptBack(pot.Id))];

    /// <summary>What a pot is to reach, or null for spending.</summary>
    public static Money? Target(PotJob job) => job switch
    {
        PotJob.Sinking sinking => sinking.Target,
        PotJob.Ladder ladder => LadderSteps.SumOf(ladder, ladder.Steps),
        PotJob.Reserve reserve => reserve.Level,
        _ => null,
    };
}
