using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Statements.Taking;

namespace Payday.Screens.Statements;

/// <summary>What a line of the bank's can become, to be picked.</summary>
internal static class LinePicks
{
    /// <summary>First what it may be in the book, then all that money of its way can be for.</summary>
    public static ImmutableArray<PickItem<Proposal>> Of(Book book, PlannedLine line)
    {
        bool comesIn = line.Line.Amount.IsPositive;
        return
        [
            .. line.Partners.Select(partner => Partner(book, partner)).OfType<PickItem<Proposal>>(),
            .. MoveEnds.To(book).Where(end => end != MoveEnds.Loose).Select(end => Item(book, new LineTarget(LineUse.For, end), comesIn ? $"refund, {PurposeNames.Sort(end)}" : PurposeNames.Sort(end))),
            .. comesIn ? book.Household.Sources.Select(source => Item(book, new LineTarget(LineUse.Income, LedgerEnd.PaidBy(source.Id)), "income")) : [],
            .. TargetText.Words.Where(word => comesIn || word.Target.Use != LineUse.Income).Select(word => Item(book, word.Target, Sort(word.Target.Use, comesIn))),
        ];
    }

    private static PickItem<Proposal>? Partner(Book book, Partner partner) => partner switch
    {
        Partner.Entered entered => new(
            new Proposal(LineTarget.Leave, ProposalReason.Chosen, true) { Lines = [entered.Line.Number] }, TargetText.Of(book.Household, partner), "there already"),
        Partner.Due due => new(
            new Proposal(new LineTarget(LineUse.For, due.Line.Key.Bill is { } bill ? LedgerEnd.InAccount(Purpose.SetAside(bill)) : new LedgerEnd.Owed(due.Line.Key.Debt!.Value)), ProposalReason.Chosen, true) { Due = due.Line.Key },
            TargetText.Of(book.Household, partner),
            "to pay"),
        _ => null,
    };

    private static PickItem<Proposal> Item(Book book, LineTarget target, string sort) =>
        new(new Proposal(target, ProposalReason.Chosen, true), TargetText.Name(book.Household, target) is var name && target.Use == LineUse.For ? name : Capital(name), sort);

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Sort(LineUse use, bool comesIn) => use switch
    {
        LineUse.Leave => "nothing is written",
        LineUse.Income => "of no source",
        LineUse.Gift or LineUse.Transfer => comesIn ? "left to place" : "from the buffer",
        _ => comesIn ? "to the buffer" : "from the buffer",
    };
}
