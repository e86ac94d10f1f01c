using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Statements.Matching;
using Payday.Statements.Taking;

namespace Payday.Screens.Statements;

/// <summary>What a line of the bank's can become, to be picked.</summary>
internal static class LinePicks
{
    /// <summary>First what it may be in the book, then all that money of its way can be for; null stands for a move, of which both ends are picked.</summary>
    public static ImmutableArray<PickItem<Proposal?>> Of(Book book, PlannedLine line)
    {
        IEnumerable<PickItem<Proposal?>> targets = TargetPicks.Of(book, line.Line.Amount.IsPositive)
            .Select(item => new PickItem<Proposal?>(item.Value is { } target ? new Proposal(target, ProposalReason.Chosen, true) : null, item.Name, item.Sort));

        // Of a line that the bank calls cash that comes first.
        return
        [
            .. line.Partners.Select(partner => Partner(book, partner)).OfType<PickItem<Proposal?>>(),
            .. CashWords.Are(line.Line) ? targets.OrderBy(item => item.Value?.Target.Use is LineUse.Cash or LineUse.Return ? 0 : 1) : targets,
        ];
    }

    private static PickItem<Proposal?>? Partner(Book book, Partner partner) => partner switch
    {
        Partner.Entered entered => new(
            new Proposal(LineTarget.Leave, ProposalReason.Chosen, true) { Lines = [entered.Line.Number] }, TargetText.Of(book.Household, partner), "there already"),
        Partner.Due due => new(
            new Proposal(new LineTarget(LineUse.For, due.Line.Key.Bill is { } bill ? LedgerEnd.InAccount(Purpose.SetAside(bill)) : new LedgerEnd.Owed(due.Line.Key.Debt!.Value)), ProposalReason.Chosen, true) { Due = due.Line.Key },
            TargetText.Of(book.Household, partner),
            "to pay"),
        _ => null,
    };
}
