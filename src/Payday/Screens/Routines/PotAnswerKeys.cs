using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Routines;

/// <summary>The answers to what a sinking pot asks: each is a setting of the pot, stored at once.</summary>
internal static class PotAnswerKeys
{
    /// <summary>The keys of a row that asks; they are named in <see cref="Words"/>, for which the bottom line has no room.</summary>
    public static IReadOnlyList<Binding> Of(PotRow row, RoutineWork work)
    {
        Pot pot = row.Pot;
        LocalDate payday = work.Plan.Period.First;
        Binding finished = Letters.TakeOut.Does(
            "", "This pot has done what it was for and gets nothing any more.",
            () => Take(book => SinkingAnswers.Finish(book, pot.Id), $"{pot.Name} is finished; its form, h on home, can change that."));
        Binding repeats = Letters.EachYear.Does(
            "", "The target is needed again each year on its date; the pot's form has other rhythms.",
            () => Take(book => SinkingAnswers.Repeat(book, pot.Id), $"{pot.Name} is needed again every year; its form, h on home, has other rhythms."));
        Binding goesOn = Letters.GoOn.Does(
            "", "That was not all: the pot is filled on until its date.",
            () => Take(book => SinkingAnswers.GoOn(book, pot.Id), ""));
        Binding date = Letters.Days.Does(
            "", "The target must be there by another date; the pot is filled on until then.",
            () => new Way.Edit(new CellEdit($"{pot.Name} by", "", text => By(text))));
        return (row.Sinking!.Stage, PotQuestion.GoesOn(row, payday)) switch
        {
            (SinkingStage.Bought, true) => [finished, repeats, goesOn],
            (SinkingStage.Bought, false) => [finished, repeats, date],
            _ => [date, finished],
        };

        Way Take(Func<Book, Result<Household>> answer, string done)
        {
            if (work.Answer(answer, done) is { } fault)
            {
                work.Tell(fault);
            }

            return Way.Stay;
        }

        string? By(string text)
        {
            Result<LocalDate> by = TypedDate.Parse(text.Trim(), work.Session.Today, work.Session.Book.Household.Settings.DateOrder);
            return by.Ok ? work.Answer(book => SinkingAnswers.By(book, pot.Id, by.Value, payday), "") : by.Fault;
        }
    }

    /// <summary>The same in words, for the line below the table.</summary>
    public static string Words(PotRow row, LocalDate payday) => (row.Sinking!.Stage, PotQuestion.GoesOn(row, payday)) switch
    {
        (SinkingStage.Bought, true) => $"x: finished. *: needed again every year. &: go on to {DateText.Long(row.Sinking.By)}.",
        (SinkingStage.Bought, false) => "x: finished. *: needed again every year. d: needed again by a date.",
        _ => "d: give it a new date. x: finished.",
    };
}
