using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Lists;
using Payday.Reports;
using Payday.Screens.Returns;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>The cash return: which pots' cash goes to the bank and in which notes, then whether it is there.</summary>
/// <param name="session">The book.</param>
internal sealed class ReturnPart(BookSession session) : Part
{
    /// <inheritdoc/>
    public override string Name => "return";

    /// <inheritdoc/>
    public override string Empty => "No pot has cash to pay back.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions
    {
        get
        {
            ReturnPlan plan = Plan;
            Question[] all = plan.Lines.IsEmpty ? [] : [.. plan.Lines.Select(Of), Confirm(plan)];
            return [.. all.Select(question => question with { Under = Name, Heading = () => [$"Cash return. {plan.Total.ToString(session.Style)} goes to the bank."], Words = new ReturnScreen(session).Words })];
        }
    }

    private ReturnPlan Plan => ReturnPlan.Of(session.Book, session.Return);

    private Question Of(ReturnLine line) => new(
        $"pot {line.Pot.Id.Text}",
        $"{line.Pot.Name}: {line.Owes.ToString(session.Style)} to pay back. {Way(line)} Does it go to the bank? {YesOrNo.Proposed(line.Goes)}.",
        answer => YesOrNo.Read(answer, line.Goes) switch
        {
            { } goes => Decide(draft => draft with { Leaves = goes ? draft.Leaves.Remove(line.Pot.Id) : draft.Leaves.Add(line.Pot.Id) }, goes ? "" : $"{line.Pot.Name} has it to pay back still."),
            _ when string.Equals(answer, "proposal", StringComparison.OrdinalIgnoreCase) => Again(draft => draft with { Picked = draft.Picked.Remove(line.Pot.Id) }),
            _ => Notes(line, answer),
        })
    {
        Help =
        [
            $"yes or no; or the notes that you pull from this pot, like {session.Style.Written("20")}=2,{session.Style.Written("10")}=1; proposal takes those planned again.",
        ],
    };

    private string Way(ReturnLine line)
    {
        if (line.Fault is { } fault)
        {
            return ReturnTexts.Of(fault, session.Style);
        }

        if (ReturnTexts.Advice(line, session.Style) is { } advice)
        {
            return advice;
        }

        string pull = line.Notes is { } notes ? Listed(notes) : "nothing";
        return line.Swap is { } swap
            ? $"First give {Listed(swap.Gives)} to {(swap.With is null ? "the loose notes" : WeekText.PotName(session.Book, swap.With))} for {Listed(swap.Gets)}, then pull {pull}."
            : $"Pull {pull}.";
    }

    private string Listed(Notes notes) => NoteText.Listed(notes, session.Book.Household.Currency, session.Style);

    private Taken Notes(ReturnLine line, string answer)
    {
        Result<Notes> notes = NoteList.Read(session.Book.Household, answer);
        return notes.Ok
            ? Again(draft => draft with { Picked = draft.Picked.SetItem(line.Pot.Id, notes.Value) })
            : new Taken.Refused($"{FaultTexts.Of(notes.Fault, session.Style)} Or type yes or no.");
    }

    private Taken Decide(Func<ReturnDraft, ReturnDraft> decide, string said)
    {
        ReturnDraft next = decide(session.Return);
        if (!next.Leaves.SetEquals(session.Return.Leaves))
        {
            session.Return = next;
        }

        return new Taken.Next(said);
    }

    private Taken.Again Again(Func<ReturnDraft, ReturnDraft> decide)
    {
        session.Return = decide(session.Return);
        return new Taken.Again("");
    }

    private Question Confirm(ReturnPlan plan)
    {
        Money unlisted = plan.Unlisted;
        string notes = plan.SlipNotes.IsEmpty ? "" : $" in {Listed(plan.SlipNotes)}";
        string unknown = unlisted.IsZero ? "" : $" {unlisted.ToString(session.Style)} of it is in notes that you choose.";
        string text = plan.Total.IsZero
            ? "Nothing goes to the bank this time. Leave it so? yes proposed."
            : $"{plan.Total.ToString(session.Style)} goes to the bank{notes}.{unknown} Is it there? no proposed.";
        return new Question("confirm", text, answer => (YesOrNo.Read(answer, plan.Total.IsZero), plan.Total.IsZero) switch
        {
            (null, _) => new Taken.Refused(YesOrNo.Neither),
            (true, false) => Write(),
            _ => new Taken.Done(plan.Total.IsZero ? "" : "It is kept for when the cash is at the bank; payday return shows its slip."),
        })
        {
            Help = ["yes, once the cash is at the bank, writes it to the ledger. no keeps what was decided. payday return --undo takes it back."],
        };
    }

    private Taken Write()
    {
        ReturnPlan plan = Plan;
        Result<Book> after = plan.Confirm(session.Today);
        if (!after.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(after.Fault, session.Style));
        }

        string done = WeekText.Returned(session.Book, after.Value, plan.Total);
        session.Take(after.Value);
        session.Return = ReturnDraft.AsPlanned;
        return new Taken.Done(done);
    }
}
