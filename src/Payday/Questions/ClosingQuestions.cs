using NodaTime;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Texts;
using Humanizer;

namespace Payday.Questions;

/// <summary>Step 7: what the slip asks for, and the closing.</summary>
internal sealed class ClosingQuestions(RoutineWork work) : StepQuestions(work)
{
    // As the screen says it: from so many days on the money isn't there yet.
    private const int Early = 1;

    private readonly SlipView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Slip;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening =>
    [
        Plan.Withdrawal.Plan.Withdraw.IsEmpty
            ? "The slip asks for no notes."
            : $"The slip asks for {Shown(Plan.Withdrawal.Plan.WithdrawTotal)}: {NoteText.Listed(Plan.Withdrawal.Plan.Withdraw, Plan.Withdrawal.Plan.Currency, Work.Session.Style)}.",
        .. Closed() is { Ok: true } closed ? ClosingReport.Of(Plan, closed.Value) : [],
    ];

    /// <inheritdoc/>
    public override IEnumerable<Question> All => [Close()];

    private int Days => Period.DaysBetween(Work.Session.Today, Plan.Period.First);

    // What was kept in the book since the plan was made, such as this question, goes with it.
    private Result<Book> Closed() => Closing.Of(Plan with { Book = Work.Session.Book });

    private Question Close()
    {
        Result<Book> closed = Closed();
        bool proposed = closed.Ok && Days <= Early;
        string why = Days > Early ? $" This payday is {"day".ToQuantity(Days)} off: close it once the money is there." : "";
        string text = closed.Ok
            ? $"{why} Close the payday? {YesOrNo.Proposed(proposed)}."
            : $"This payday can't be closed: {FaultTexts.Of(closed.Faults, Work.Session.Style)} back leads to the steps before; stop keeps it.";
        return new Question("close", text.TrimStart(), answer => YesOrNo.Read(answer, proposed) switch
        {
            null => new Taken.Refused(YesOrNo.Neither),
            false => new Taken.Done("It stays as it is, and can still be changed."),
            _ => Write(),
        })
        {
            Help = [.. closed.Ok ? ClosingReport.Of(Plan, closed.Value) : [], RuleTexts.Slip, "Closed, it can be taken up again by payday undo --payday, while nothing later depends on it."],
            Words = view.Words,
        };
    }

    private Taken Write()
    {
        Result<Book> closed = Closed();
        if (!closed.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(closed.Faults, Work.Session.Style));
        }

        Work.Session.Take(closed.Value);
        return new Taken.Done($"The payday is closed. payday slip shows its slip, payday slip --filling which notes go in which pot. {Work.Session.News()}".TrimEnd());
    }
}
