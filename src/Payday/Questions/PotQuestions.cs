using NodaTime;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Routines;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Step 4: what goes in each pot, and what becomes of pots that were spent.</summary>
internal sealed class PotQuestions(RoutineWork work) : StepQuestions(work)
{
    private readonly PotsView view = new(work);

    /// <inheritdoc/>
    public override RoutineStep Step => RoutineStep.Pots;

    /// <inheritdoc/>
    public override IEnumerable<string> Opening =>
    [
        Plan.Pots.Cut.IsZero ? $"{Shown(Plan.Pots.Total)} goes in pots." : view.Note.Text + ".",
    ];

    /// <inheritdoc/>
    public override IEnumerable<Question> All => Plan.Pots.Rows.Zip(view.Rows).SelectMany(one =>
        (Question[])[.. one.First.Asks ? [Becomes(one.First)] : Array.Empty<Question>(), Of(one.First, one.Second)]);

    private Question Of(PotRow pot, StepRow row)
    {
        string proposed = $"{Shown(pot.Proposed)} proposed";
        string figure = pot.Changed && pot.Fill != pot.Proposed ? $"{Shown(pot.Fill)} as you said, {proposed}" : proposed;
        string why = pot.Why.Length == 0 ? "" : $", {pot.Why}";
        string cut = pot.Cut.IsPositive ? $"; that is {Shown(pot.Cut)} less than it asks for" : "";
        Question question = Amount(
            $"pot {pot.Pot.Id.Text}",
            $"{pot.Pot.Name}: {figure}{why}{cut}. How much?",
            row,
            () => Plan.Pots.Rows.First(one => one.Pot.Id == pot.Pot.Id) is var now ? $"{now.Pot.Name}: {Shown(now.Fill)}." : "");
        return question with
        {
            Help = [.. question.Help, $"{pot.Pot.Name} has {Shown(pot.HasNow)} now, in {(PotsReport.Place(pot.Pot) == "cash" ? "cash" : "the account")}.", .. pot.Asks ? [] : row.Detail],
            Words = [.. view.Words.Where(word => word.Word != "?")],
        };
    }

    private Question Becomes(PotRow row)
    {
        LocalDate payday = Plan.Period.First;
        bool bought = row.Sinking!.Stage == SinkingStage.Bought;
        bool goesOn = bought && PotQuestion.GoesOn(row, payday);
        string ways = (bought, goesOn) switch
        {
            (true, true) => "finished, every year, or go on",
            (true, false) => "finished, every year, or a date by which it is needed again",
            _ => "finished, or a date by which it is needed",
        };
        return new Question(
            $"becomes {row.Pot.Id.Text}",
            $"{PotQuestion.Of(row, Work.Session.Style)} Nothing proposed until you say what becomes of it: {ways}.",
            answer => answer.ToUpperInvariant() switch
            {
                "" => Taken.On,
                "FINISHED" => Said(book => SinkingAnswers.Finish(book, row.Pot.Id), $"{row.Pot.Name} is finished."),
                "EVERY YEAR" when bought => Said(book => SinkingAnswers.Repeat(book, row.Pot.Id), $"{row.Pot.Name} is needed again every year."),
                "GO ON" when goesOn => Said(book => SinkingAnswers.GoOn(book, row.Pot.Id), $"{row.Pot.Name} goes on to {DateText.Long(row.Sinking.By)}."),
                _ => By(row.Pot, answer, ways),
            })
        {
            Help =
            [
                "Finished: this pot has done what it was for and gets nothing any more.",
                .. bought ? ["Every year: the target is needed again each year on its date."] : Array.Empty<string>(),
                goesOn ? "Go on: that was not all, and the pot is filled on until its date." : "A date, like 2027-03-12 or 12 Mar 2027: the pot is filled on until then.",
                "It is a setting of the pot, stored at once; Enter leaves it as it is.",
            ],
        };
    }

    private Taken By(Pot pot, string answer, string ways)
    {
        Result<LocalDate> by = TypedDate.Parse(answer, Work.Session.Today, Work.Session.Book.Household.Settings.DateOrder);
        return by.Ok
            ? Said(book => SinkingAnswers.By(book, pot.Id, by.Value, Plan.Period.First), $"{pot.Name} is needed by {DateText.Long(by.Value)}.")
            : new Taken.Refused($"{FaultTexts.Of(by.Fault)} It can be {ways}.");
    }

    private Taken Said(Func<Book, Result<Household>> answer, string said) => Taken.OrRefused(Work.Answer(answer, ""), () => said);
}
