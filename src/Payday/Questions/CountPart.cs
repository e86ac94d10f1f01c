using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Lists;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Counts;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>The week-end count: what is left of each cash pot and what becomes of it, then whether it is right.</summary>
internal sealed class CountPart : Part
{
    private readonly BookSession session;
    private CountWork work;

    public CountPart(BookSession session)
    {
        this.session = session;
        work = new CountWork(session);
    }

    /// <inheritdoc/>
    public override string Name => "count";

    /// <inheritdoc/>
    public override string Empty => "No cash pot has anything to count.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions
    {
        get
        {
            // What the place of the question changed in the book is no change of the count.
            work = new CountWork(session);
            if (Plan.Rows.IsEmpty)
            {
                return [];
            }

            Question[] all = [Day(), .. Plan.Rows.SelectMany(Of), Confirm()];
            return [.. all.Select(question => question with { Under = $"count {Plan.Draft.Date:uuuu-MM-dd}", Heading = () => [Heading()], Words = new CountScreen(session).Words })];
        }
    }

    private CountPlan Plan => work.Plan;

    private CountCells Cells => new(work, _ => { });

    private string Heading()
    {
        int later = CountWeeks.Open(session.Book, session.Today).Count(week => week.LastDay > Plan.Draft.Date);
        return $"Week-end count of {DateText.Long(Plan.Draft.Date)}, {"pot".ToQuantity(Plan.Rows.Length)} to count.{(later == 0 ? "" : $" {"later week".ToQuantity(later)} to count after this.")}";
    }

    private Question Day() => new("day", $"Count for which day? {DateText.Long(Plan.Draft.Date)} proposed.", answer => answer.Length == 0
        ? Taken.On
        : Taken.OrRefused(Cells.Day().Accept(answer), () => $"Counted for {DateText.Long(Plan.Draft.Date)}."))
    {
        Help = ["The day that is counted for, like 2026-03-12 or 12 Mar; yesterday works too. What was entered was for the day before."],
    };

    private IEnumerable<Question> Of(CountRow row)
    {
        yield return Left(row);
        if (row.Entry is not null && row.Left > row.Expected && !(row.Since > Plan.Draft.Date))
        {
            yield return Found(row);
        }

        if (row is { Entry: not null, Left.IsZero: false, Fault: null })
        {
            yield return Then(row);
        }
    }

    private Question Left(CountRow row)
    {
        string owed = row.StillOwed.IsPositive ? $" beside {Shown(row.StillOwed)} to pay back" : "";
        string now = row.Entry is null ? "Nothing proposed." : $"{Shown(row.Left)} as you said{Missing(row)}.";
        string fault = row.Fault is { } wrong ? " " + CountTexts.Of(wrong, session.Style) : "";
        return new Question($"left {row.Pot.Id.Text}", $"{row.Pot.Name}: {Shown(row.Expected)} was there to spend{owed}. {now}{fault} How much is left?", answer => Take(row, answer))
        {
            Help =
            [
                $"Type what is left; a sum like {session.Style.Written("12.50+3")} is taken, or how many of each note and coin, like 20=1,5=2. Enter leaves it as it is; a pot without a figure stays uncounted.",
                $"missing, a name and an amount, like missing Lost coin={session.Style.Written("0.50")}, says what is neither there nor spent; missing alone takes that back.",
                "uncounted takes the figure away.",
                $"It was {(row.Since is { } since ? $"counted last on {DateText.Weekday(since)}" : "not counted before")}.",
                .. Differences.Open(session.Book).Where(count => count.PotId == row.Pot.Id).Select(count => WeekText.Difference(session.Book, count)),
            ],
        };
    }

    private string Missing(CountRow row) => row.Difference.IsZero ? ""
        : $", {Shown(row.Difference.IsNegative ? -row.Difference : row.Difference)} {(row.Difference.IsNegative ? "found" : "missing")}: {row.Entry!.DifferenceName}";

    private Taken Take(CountRow row, string answer)
    {
        const string MissingWord = "missing";
        if (answer.Length == 0)
        {
            return Taken.On;
        }

        if (string.Equals(answer, "uncounted", StringComparison.OrdinalIgnoreCase))
        {
            work.Clear(row.Pot.Id);
            return new Taken.Next($"{row.Pot.Name} is not counted.");
        }

        if (answer.StartsWith(MissingWord, StringComparison.OrdinalIgnoreCase))
        {
            return Said(row, Cells.Difference(row).Accept(answer[MissingWord.Length..].Trim()));
        }

        return answer.Contains('=', StringComparison.Ordinal) ? ByNotes(row, answer) : Said(row, Cells.Left(row, "").Accept(answer));
    }

    private Taken ByNotes(CountRow row, string answer)
    {
        Result<Notes> notes = NoteList.Read(session.Book.Household, answer);
        if (!notes.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(notes.Fault, session.Style));
        }

        Money worth = notes.Value.Worth(session.Book.Household.Currency);
        work.Enter(row.Pot.Id, (row.Entry ?? new CountEntry(worth)) with { Left = worth, Notes = notes.Value, IsFind = false });
        return Said(row, null);
    }

    // What is wrong with a figure is asked for again; more than was there can be named as found by the next question.
    private Taken Said(CountRow row, string? fault)
    {
        if (fault is not null)
        {
            return new Taken.Refused(fault);
        }

        CountRow now = Plan.Rows.First(one => one.Pot.Id == row.Pot.Id);
        return now.Fault is { } wrong
            ? now.Left > now.Expected && !(now.Since > Plan.Draft.Date) ? new Taken.Next(CountTexts.Of(wrong, session.Style)) : new Taken.Again("")
            : new Taken.Next($"{now.Pot.Name}: {Shown(now.Left)} left, {Shown(now.Spent)} spent{Missing(now)}.");
    }

    private Question Found(CountRow row) => new(
        $"found {row.Pot.Id.Text}",
        $"{row.Pot.Name}: {Shown(row.Left - row.Expected)} more than was there. {(row.Entry!.IsFind ? $"Found: {row.Entry.DifferenceName}" : "Nothing proposed")}. What was found? back leads to the figure.",
        answer => answer.Length == 0
            ? row.Fault is { } fault ? new Taken.Refused(CountTexts.Of(fault, session.Style)) : Taken.On
            : Cells.Left(row, "").Accept(answer) is null ? Instead(row)
            : Said(row, Cells.Difference(row).Accept(answer)))
    {
        Help = ["A name, in a few words, says that it was found; it is kept by that name until it is cleared up. An amount is what is left instead."],
    };

    // Another figure in the place of a name is asked about again where it too is more than was there.
    private Taken Instead(CountRow row) =>
        Plan.Rows.First(one => one.Pot.Id == row.Pot.Id).Fault is { } wrong ? new Taken.Again(CountTexts.Of(wrong, session.Style)) : Said(row, null);

    private Question Then(CountRow row)
    {
        string now = row.MovesOnTo is null ? "it stays in the pot" : $"it goes to {row.MovesOnTo.NameIn(session.Book.Household)}";
        return new Question($"then {row.Pot.Id.Text}", $"{row.Pot.Name}: {Shown(row.Left)} is left; {now} proposed. Where does it go?", answer =>
        {
            if (answer.Length == 0)
            {
                return Taken.On;
            }

            if (Targets(row).Find(answer, out MoveTarget? target) is { } fault)
            {
                return new Taken.Refused(fault);
            }

            work.Enter(row.Pot.Id, row.Entry! with { Then = new CountThen(target) });
            return new Taken.Next(target is null ? "It stays in the pot." : $"It goes to {target.NameIn(session.Book.Household)}.");
        })
        {
            Help = [Targets(row).Names],
        };
    }

    private NamedChoice<MoveTarget?> Targets(CountRow row) => new(
    [
        ("stays", null),
        ("buffer", MoveTarget.Buffer),
        .. session.Book.Household.Debts.Where(debt => session.Book.Ledger.Balances.OwedOn(debt.Id).IsPositive).Select(debt => (CleanText.OneLine(debt.Name), (MoveTarget?)MoveTarget.Debt(debt.Id))),
        .. session.Book.Household.Pots.Where(pot => pot.Id != row.Pot.Id).Select(pot => (CleanText.OneLine(pot.Name), (MoveTarget?)MoveTarget.Pot(pot.Id))),
    ]);

    private Question Confirm() => new(
        "confirm",
        Plan.Counted == 0
            ? "No pot is counted. Leave it so? yes proposed."
            : $"{"pot".ToQuantity(Plan.Counted)} counted, {Shown(Plan.Spent)} spent.{string.Concat(Plan.Faults.Select(fault => " " + CountTexts.Of(fault, session.Style)))} Write it to the ledger? {YesOrNo.Proposed(true)}.",
        answer => (YesOrNo.Read(answer, true), Plan.Counted) switch
        {
            (null, _) => new Taken.Refused(YesOrNo.Neither),
            (_, 0) => new Taken.Done(""),
            (false, _) => new Taken.Done("It is kept, and not confirmed."),
            _ => Write(),
        })
    {
        Help = ["yes writes what was counted to the ledger; pots without a figure stay uncounted. no keeps it for the next time. payday count --undo takes a count back."],
    };

    private Taken Write()
    {
        string done = $"{"pot".ToQuantity(Plan.Counted)} counted, {Shown(Plan.Spent)} spent.";
        Result<bool> goesOn = work.Confirm();
        return !goesOn.Ok ? new Taken.Refused("Not confirmed: " + FaultTexts.Of(goesOn.Fault, session.Style))
            : goesOn.Value ? new Taken.To("day", done + " The next week is to be counted too.")
            : new Taken.Done(done);
    }

    private string Shown(Money amount) => amount.ToString(session.Style);
}
