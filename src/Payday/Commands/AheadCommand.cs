using System.CommandLine;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Outlooks;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday ahead</c>: the coming paydays, with all proposals taken.</summary>
internal static class AheadCommand
{
    private const int MostPaydays = 260;
    private const int ChartHeight = 6;

    public static Command Build(CommandShell shell)
    {
        Option<int?> count = OptionValues.Count("--paydays", $"How many, from 1 to {MostPaydays}. Default: {Outlook.UsualPaydays}.", 1, MostPaydays);
        var tries = new Option<string[]>("--if") { Description = "What a bill or an income source would come to each time, on trial; nothing is stored.", HelpName = "NAME=AMOUNT" };
        var command = new PaydayCommand(
            "ahead",
            "Look ahead: the coming paydays as their routines would close with all proposals taken.",
            "payday ahead --paydays 12 --if \"Rent=1700\"") { count, tries };
        return Invocation.Does(command, shell, call => call.OnLook(book =>
        {
            Book tried = book;
            foreach (string text in call.Parsed.GetValue(tries) ?? [])
            {
                Result<Trial> trial = Trial.Parse(book.Household, text);
                if (!trial.Ok)
                {
                    return new Answer.WrongUse($"--if {text}: {FaultTexts.Of(trial.Fault, book.Household.Settings.Numbers)}");
                }

                tried = trial.Value.In(tried);
            }

            return Of(book, ReferenceEquals(tried, book) ? null : tried, call.Parsed.GetValue(count) ?? Outlook.UsualPaydays);
        }));
    }

    private static Answer Of(Book book, Book? tried, int count)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<Outlook> plan = Outlook.Of(book, count);
        Result<Outlook> trial = tried is null ? default : Outlook.Of(tried, count);
        if (!plan.Ok || !trial.Ok)
        {
            return Answer.Because((plan.Ok ? trial : plan).Fault!, style);
        }

        Outlook shown = tried is null ? plan.Value : trial.Value!;
        return new Answer.Done(
            [
                .. Report.Heading(OutlookReport.Title(shown)),
                .. Charts.LineChart.Lines([.. shown.Paydays.Select(payday => payday.AccountAfter)], Report.Width, ChartHeight, style, time: OutlookReport.Time(shown)),
                OutlookReport.Legend,
                .. OutlookReport.Lines(plan.Value, tried is null ? null : shown, style, Report.Width),
                "",
                .. OutlookReport.Notes(shown, tried is null ? null : plan.Value, style).SelectMany(Report.Prose),
                "",
                .. Report.Prose("Spending pots are taken as used up by the period's end, pots with a target as spent on their date. Nothing of this is stored; pay and prices will differ."),
            ],
            JsonSerializer.Serialize(Json(plan.Value, tried is null ? null : Json(shown, null)), ResultJson.Readable.AheadResult));
    }

    private static AheadResult Json(Outlook outlook, AheadResult? trial) => new(
        [.. outlook.Paydays.Select(payday => new AheadPaydayResult(
            LocalDatePattern.Iso.Format(payday.Date),
            payday.Income.ToPlain(),
            payday.ToOverdraft.ToPlain(),
            payday.FromBuffer.ToPlain(),
            payday.Bills.ToPlain(),
            payday.Minimums.ToPlain(),
            payday.Pots.ToPlain(),
            payday.Surplus.ToPlain(),
            payday.Spare.ToPlain(),
            payday.AccountAfter.ToPlain(),
            payday.CashAfter.ToPlain(),
            payday.Faults.IsEmpty))],
        [.. outlook.Reached.Select(pot => new AheadEndResult(pot.Name, LocalDatePattern.Iso.Format(pot.On)))],
        [.. outlook.PaidOff.Select(debt => new AheadEndResult(debt.Name, LocalDatePattern.Iso.Format(debt.On)))],
        trial);
}
