using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.StatementTaking;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Statements.Taking;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Statements;

/// <summary>The keys of one line of the bank's: taken as proposed, picked, left, with its notes, kept as a rule.</summary>
/// <param name="session">The book.</param>
/// <param name="chosen">Takes what was chosen for a line, null where nothing, and goes on to the next one.</param>
internal sealed class LineKeys(BookSession session, Action<PlannedLine, Proposal?> chosen)
{
    /// <summary>The keys.</summary>
    /// <param name="line">The line.</param>
    /// <param name="allSure">The key for all lines that are sure; null where none is.</param>
    public IEnumerable<Binding> Of(PlannedLine line, Binding? allSure)
    {
        bool isTaken = line.Choice is not null;
        if (isTaken || line.Proposal is not null)
        {
            yield return new(Key.Space, "Space", isTaken ? "not yet" : "take", "Take what is proposed for this line, or take back what was chosen; on to the next one.", () => Done(line, isTaken ? null : line.Proposal! with { IsSure = true }));
        }

        yield return new(Key.Enter, "Enter", "becomes", "Pick what this line becomes; a letter goes to the next name that begins with it.", () => new Way.To(Picks(line)));
        if (allSure is not null)
        {
            yield return allSure;
        }

        if (Cash(line) is { } cash)
        {
            yield return Letters.Notes.Does("notes", "The notes that were fetched or brought, by value.", () => new Way.To(Counted(line, cash)));
        }

        yield return Letters.TakeOut.Does("leave", "Leave this line: nothing is written for it.", () => Done(line, new Proposal(LineTarget.Leave, ProposalReason.Chosen, true)));
        yield return Letters.Rule.Does("rule", "Keep a rule: lines like this one become what this one becomes.", () => Rule(line));
    }

    /// <summary>The notes of a line that is cash, in a sentence; empty where it is none, or they aren't known.</summary>
    public string Notes(PlannedLine line) => Cash(line) is { } cash && NotesOf(line, cash) is { IsEmpty: false } notes
        ? $" Notes: {NoteText.Listed(notes, session.Book.Household.Currency, session.Style)}; n changes them."
        : "";

    private static Proposal? Cash(PlannedLine line) => (line.Choice ?? line.Proposal) is { Target.Use: LineUse.Cash } cash ? cash : null;

    private Notes? NotesOf(PlannedLine line, Proposal cash) =>
        cash.Notes ?? (line.Line.Amount.IsNegative ? CashLine.Fewest(session.Book.Household, -line.Line.Amount) : null);

    private NotesScreen Counted(PlannedLine line, Proposal cash) => new(
        session,
        $"{DateText.Short(line.Line.Date)}, {line.Line.Amount.ToString(session.Style)}: the notes",
        line.Line.Amount.IsNegative ? "The notes that the bank gave." : "The notes that went to the bank.",
        NotesOf(line, cash) ?? Core.Cash.Notes.None,
        notes => chosen(line, cash with { IsSure = true, Reason = ProposalReason.Chosen, Notes = notes.IsEmpty ? null : notes }));

    private PickScreen<Proposal?> Picks(PlannedLine line)
    {
        ImmutableArray<PickItem<Proposal?>> picks = LinePicks.Of(session.Book, line);
        Proposal? now = line.Choice ?? line.Proposal;
        return new PickScreen<Proposal?>(
            $"{DateText.Short(line.Line.Date)}, {line.Line.Amount.ToString(session.Style)}: what it becomes",
            picks,
            picks.Select(pick => pick.Value).FirstOrDefault(pick => now is not null && pick?.Target == now.Target && pick.Lines.SequenceEqual(now.Lines)) ?? picks[0].Value,
            picked => picked is null
                ? new Way.Instead(MovePicks.Of(session.Book, line.Line.Amount.IsPositive, target => Picked(line, new Proposal(target, ProposalReason.Chosen, true))))
                : Picked(line, picked));
    }

    private Way Picked(PlannedLine line, Proposal choice)
    {
        chosen(line, choice);
        return Way.Back;
    }

    private Way Done(PlannedLine line, Proposal? choice)
    {
        chosen(line, choice);
        return Way.Stay;
    }

    private Way Rule(PlannedLine line)
    {
        if ((line.Choice ?? line.Proposal) is not { Lines.IsEmpty: true } proposal)
        {
            return new Way.Says("Pick what this line becomes first: Enter, or x to leave it. Then # keeps it as a rule.");
        }

        return new Way.Edit(new CellEdit($"Lines with these words become {TargetText.Name(session.Book.Household, proposal.Target)}", RuleMatch.Suggested(line.Line), words =>
        {
            if (RulesScreen.FaultOf(words) is { } fault)
            {
                return fault;
            }

            session.Take(session.Book with { Weeks = session.Book.Weeks.With(new StatementRule(RulesScreen.Clean(words), proposal.Target)) });
            if (line.Choice is null)
            {
                chosen(line, proposal with { IsSure = true });
            }

            return null;
        }));
    }
}
