using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Reports;

/// <summary>Pots and their fills.</summary>
internal static class PotsReport
{
    /// <summary>What doesn't fit, in a sentence: what pots get less than they ask for, and what bills do.</summary>
    public static string Short(RoutinePlan plan, NumberStyle style)
    {
        Money bills = plan.Bills.Lacking;
        return $"It doesn't fit: pots get {plan.Pots.Cut.ToString(style)} less than they ask for, last ranks first{(bills.IsPositive ? $", and {bills.ToString(style)} less is set aside for bills" : "")}.";
    }

    /// <summary>Step 4 of the routine.</summary>
    public static IEnumerable<string> Step(RoutinePlan plan, NumberStyle style) =>
    [
        .. Report.Heading("4 Pots"),
        .. plan.Pots.Rows.IsEmpty ? ["No pots."] : Rows(plan.Pots, style),
        .. plan.Pots.Cut.IsPositive
            ? [.. Report.Prose("! " + Short(plan, style))]
            : Array.Empty<string>(),
    ];

    // Until a fill is changed the proposals are the fills, and names and reasons have more use for the room.
    private static IEnumerable<string> Rows(PotsStep pots, NumberStyle style)
    {
        bool changed = pots.Rows.Any(row => row.Changed);
        ImmutableArray<string> Shown(ImmutableArray<string> cells) => changed ? cells : cells.RemoveAt(3);

        ImmutableArray<TextColumn> columns =
        [
            Report.Names("Pot"), new("where") { Drops = 2 }, Report.Amounts("has now"),
            .. changed ? [Report.Amounts("proposed")] : Array.Empty<TextColumn>(),
            Report.Amounts("fill"), new("why") { Drops = 1 },
        ];
        return Report.Table(
            style,
            columns,
            pots.Rows.Select(row => Shown(Cells(row, style))),
            [Shown(["Filled", "", "", "", pots.Total.ToString(style), ""])]);
    }

    /// <summary>A pot's name, where it is held, what it has, what is proposed, its fill and why.</summary>
    public static ImmutableArray<string> Cells(PotRow row, NumberStyle style) =>
        [row.Pot.Name, Place(row.Pot), row.HasNow.ToString(style), row.Proposed.ToString(style), Report.Marked(row.Fill, row.Changed, style), row.Why];

    /// <summary>Where a pot is held, in a word.</summary>
    public static string Place(Pot pot) => pot.Place == Core.Ledgers.Place.Cash ? "cash" : "account";

    /// <summary>What a pot has, wherever it is.</summary>
    public static Money HasNow(Balances balances, Pot pot) =>
        PotMoney.HasNow(balances, pot.Id);

    /// <summary>What a pot is to reach, or null for spending.</summary>
    public static Money? Target(Book book, Pot pot, LocalDate today) =>
        pot.Kind is PotKind.Ladder ladder ? LadderSteps.SumOf(ladder, ladder.Steps) : PotTarget.Of(book, pot, today);
}
