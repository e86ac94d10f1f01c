using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Pots and their fills.</summary>
internal static class PotsReport
{
    /// <summary>Step 4 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Heading("4 Pots"),
        .. plan.Pots.Rows.IsEmpty ? ["No pots."] : Rows(plan.Pots, style),
        .. plan.Pots.Cut.IsPositive
            ? [$"! It doesn't fit: the proposals are {plan.Pots.Cut.ToString(style)} less than the pots ask for."]
            : Array.Empty<string>(),
    ];

    // Until a fill is changed the proposals are the fills, and names and reasons have more use for the room.
    private static IEnumerable<string> Rows(PotsStep pots, NumberStyle style)
    {
        bool changed = pots.Rows.Any(row => row.Changed);
        ImmutableArray<string> Cells(string name, string held, string has, string proposed, string fill, string why) =>
            changed ? [name, held, has, proposed, fill, why] : [name, held, has, fill, why];

        ImmutableArray<TextColumn> columns =
        [
            Report.Names("Pot"), new("held"), Report.Amounts("has now"),
            .. changed ? [Report.Amounts("proposed")] : Array.Empty<TextColumn>(),
            Report.Amounts("fill"), new("why"),
        ];
        return Report.Table(
            style,
            ["held", "why"],
            columns,
            pots.Rows.Select(row => Cells(
                row.Pot.Name,
                Place(row.Pot),
                row.HasNow.ToString(style),
                row.Proposed.ToString(style),
                Report.Marked(row.Fill.ToString(style), row.Changed),
                row.Why)),
            [Cells("Filled", "", "", "", pots.Total.ToString(style), "")]);
    }

    /// <summary>Where a pot is held, in a word.</summary>
    public static string Place(Pot pot) => pot.Place == Core.Ledgers.Place.Cash ? "cash" : "account";

    /// <summary>What a pot has, wherever it is.</summary>
    public static Money HasNow(Balances balances, Pot pot) =>
        PotMoney.HasNow(balances, pot.Id);

    /// <summary>What a pot is to reach, or null for spending.</summary>
    public static Money? Target(PotKind kind) => kind switch
    {
        PotKind.Sinking sinking => sinking.Target,
        PotKind.Ladder ladder => LadderSteps.SumOf(ladder, ladder.Steps),
        PotKind.Reserve reserve => reserve.Level,
        _ => null,
    };
}
