using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Reconciling;
using Payday.Reports;
using Payday.Screens.Bank;
using Payday.Screens.Shell;
using Payday.Core.Status;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>The account against the bank: its balance and day, then line by line whether the bank shows it, then whether to write it down.</summary>
/// <param name="session">The book.</param>
internal sealed class BankPart(BookSession session) : Part
{
    private const int LongestName = 60;
    private const string AcceptId = "accept";
    private const string NameId = "name";

    /// <inheritdoc/>
    public override string Name => "bank";

    /// <inheritdoc/>
    public override string Empty => "There is nothing to compare.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions
    {
        get
        {
            ReconciliationPlan plan = Plan;
            Question[] all = [Day(plan), Balance(plan), .. plan.Lines.Select(line => Line(plan, line)), .. plan.Difference is { IsZero: false } ? [Called(plan)] : Array.Empty<Question>(), Accept(plan)];
            return [.. all.Select(question => question with { Under = Name, Heading = () => ["Account against the bank.", BankAgreement.Of(session.Book) is { } last ? ReconcileTexts.Whole(last, session.Style) : ""], Words = new ReconcileScreen(session).Words })];
        }
    }

    private ReconciliationPlan Plan => ReconciliationPlan.Of(session.Book, session.Today);

    private Question Day(ReconciliationPlan plan) => new("day", $"The day of the bank's balance: {DateText.Long(plan.Draft.Date)} proposed. Which day?", answer =>
    {
        if (answer.Length == 0)
        {
            return Taken.On;
        }

        Result<LocalDate> day = TypedDate.Parse(answer, session.Today, session.Book.Household.Settings.DateOrder);
        return !day.Ok ? new Taken.Refused(FaultTexts.Of(day.Fault, session.Style))
            : day.Value > session.Today ? new Taken.Refused(DateTexts.StillToCome)
            : ReconciliationPlan.DayFault(session.Book, day.Value) is { } fault ? new Taken.Refused(FaultTexts.Of(fault, session.Style))
            : Keep(Plan.With(Plan.Draft with { Date = day.Value }));
    })
    {
        Help = ["The day like 2026-03-12 or 12 Mar; yesterday works too. The balance is that at its end."],
    };

    private Question Balance(ReconciliationPlan plan) => new("balance", $"The bank's balance: {(plan.Draft.Balance is { } balance ? $"{Shown(balance)} as you said" : "nothing proposed")}. How much?", answer =>
    {
        if (answer.Length == 0)
        {
            return Plan.Draft.Balance is null ? new Taken.Refused("Type the bank's balance at the end of that day.") : Taken.On;
        }

        Result<Money> read = Money.ParseSum(answer, session.Book.Household.Currency, session.Style);
        return read.Ok ? Keep(Plan.WithBalance(read.Value)) : new Taken.Refused(FaultTexts.Of(read.Fault, session.Style));
    })
    {
        Help = ["What the bank says is in the account at the end of that day; below zero with a minus."],
    };

    private Question Line(ReconciliationPlan plan, AccountLine line)
    {
        bool there = plan.IsAtBank(line);
        return new Question(
            $"line {line.Number}",
            $"{AccountLineText.Of(session.Book.Household, line)}, {DateText.Weekday(line.Date)}: {Shown(line.Amount)}. Is it at the bank? {YesOrNo.Proposed(there)}.",
            answer => string.Equals(answer, "all", StringComparison.OrdinalIgnoreCase)
                ? All()
                : YesOrNo.Read(answer, there) switch
                {
                    null => new Taken.Refused("Type yes, no, or all where the bank shows all of them."),
                    { } says when says == there => Taken.On,
                    _ => Keep(Plan.Tick(line.Number).Value!),
                })
        {
            Help = ["yes where the bank shows it, no where it is on its way. all: the bank shows every line; back leads to those that it doesn't."],
        };
    }

    private Taken All()
    {
        if (Plan.Draft.AtBank.Count < Plan.Lines.Length)
        {
            Keep(Plan.TickAll());
        }

        return new Taken.To(Plan.Difference is { IsZero: false } ? NameId : AcceptId, "All lines are at the bank.");
    }

    private Question Called(ReconciliationPlan plan) => new(NameId, $"{Difference(plan)} What may it be? {(plan.Name.Length == 0 ? "Nothing proposed; a few words, or Enter." : $"\"{CleanText.OneLine(plan.Name)}\" proposed.")}", answer =>
    {
        string name = CleanText.OneLine(answer).Trim();
        return name.Length == 0 ? Taken.On
            : name.Length > LongestName ? new Taken.Refused($"At most {LongestName} characters, please.")
            : Keep(Plan.With(Plan.Draft with { Name = name }));
    })
    {
        Help = [.. plan.Culprits.Select(culprit => CulpritText.Of(culprit, session.Book.Household)), "What is missing here can be entered as what came in or went out; stop keeps what is ticked, and payday ask entry enters it."],
    };

    private Question Accept(ReconciliationPlan plan)
    {
        bool agrees = plan.Difference is { IsZero: true };
        string text = plan.Difference is null ? "The bank's balance isn't typed yet."
            : agrees ? "It agrees with the bank."
            : $"{Difference(plan)} It stays in view until it is explained.";
        return new Question(AcceptId, $"{text} Write it down? {YesOrNo.Proposed(agrees)}.", answer => YesOrNo.Read(answer, agrees) switch
        {
            null => new Taken.Refused(YesOrNo.Neither),
            false => new Taken.Done("What is ticked is kept."),
            _ => Write(),
        })
        {
            Help = ["yes: what is ticked is at the bank from then on. no keeps what is ticked for the next time. payday reconcile --undo takes it back."],
        };
    }

    private string Difference(ReconciliationPlan plan) =>
        $"The bank has {Shown(plan.Draft.Balance!.Value)} and should have {Shown(plan.Expected)}: a difference of {Shown(plan.Difference!.Value)}.";

    private Taken Write()
    {
        Result<Book> after = Plan.Accept();
        if (!after.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(after.Fault, session.Style));
        }

        session.Take(after.Value);
        Reconciliation written = session.Book.Weeks.Reconciliations[^1];
        return new Taken.Done(written.Difference.IsZero ? $"Agreed with the bank on {DateText.Weekday(written.Date)}." : "Written down; the difference stays in view.");
    }

    private Taken Keep(ReconciliationPlan next)
    {
        session.Take(next.Kept());
        return Taken.On;
    }

    private string Shown(Money amount) => amount.ToString(session.Style);
}
