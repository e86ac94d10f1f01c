using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.CashReturns;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Shell;

namespace Payday.Screens.Statements;

/// <summary>What lines of the bank's can become, to be picked for a line or for a rule.</summary>
internal static class TargetPicks
{
    /// <summary>All that money of a way can be for; null stands for a move, of which both ends are picked.</summary>
    /// <param name="book">The book.</param>
    /// <param name="comesIn">Whether the money came in; null for a rule, which is for both ways.</param>
    public static ImmutableArray<PickItem<LineTarget?>> Of(Book book, bool? comesIn) =>
    [
        .. MoveEnds.To(book).Where(end => end != MoveEnds.Loose).Select(end => Item(book, new LineTarget(LineUse.For, end), comesIn == true ? $"refund, {PurposeNames.Sort(end)}" : PurposeNames.Sort(end))),
        .. comesIn != false ? book.Household.Sources.Select(source => Item(book, new LineTarget(LineUse.Income, LedgerEnd.PaidBy(source.Id)), "income")) : [],
        .. CashEnds(book).Select(end => Item(book, new LineTarget(LineUse.Cash, end), comesIn switch { true => "brought to the bank", false => "fetched", _ => "fetched or brought" })),
        .. TargetText.Words.Where(word => IsOfWay(word.Target.Use, comesIn)).Select(word => Item(book, word.Target, Sort(book, word.Target.Use, comesIn))),
        new(null, "Move between purposes", "pick from where and where to"),
    ];

    /// <summary>What cash can be fetched for, and brought from: pots in cash, and the loose notes.</summary>
    public static ImmutableArray<LedgerEnd> CashEnds(Book book) => [.. MoveEnds.To(book).Where(end => end is LedgerEnd.At { Place: Place.Cash })];

    private static PickItem<LineTarget?> Item(Book book, LineTarget target, string sort) =>
        new(target, TargetText.Name(book.Household, target) is var name && target.Use is LineUse.For or LineUse.Income && target.End is not null ? name : char.ToUpperInvariant(name[0]) + name[1..], sort);

    private static bool IsOfWay(LineUse use, bool? comesIn) => comesIn != false || use is not (LineUse.Income or LineUse.Return);

    private static string Sort(Book book, LineUse use, bool? comesIn) => (use, comesIn) switch
    {
        (LineUse.Leave, _) => "nothing is written",
        (LineUse.Income, _) => "of no source",
        (LineUse.Return, true) => $"{ReturnPlan.Of(book, ReturnDraft.AsPlanned).Total.ToString(book.Household.Settings.Numbers)} is to pay back",
        (LineUse.Return, _) => "what is to pay back",
        (_, null) => "",
        (LineUse.Gift or LineUse.Transfer, true) => "left to place",
        (_, true) => "to the buffer",
        _ => "from the buffer",
    };
}
