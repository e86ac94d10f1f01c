using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Calendars;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Json;
using Payday.Printing;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday calendar</c>: the coming days, to look at or as a file for a calendar program.</summary>
internal static class CalendarCommand
{
    private const int MonthsInAFile = 12;
    private const int MostMonths = 60;

    public static Command Build(CommandShell shell)
    {
        Option<int?> months = OptionValues.Count(
            "--months", $"How many months ahead, from 1 to {MostMonths}. Default: {CalendarReport.Months}; in a file {MonthsInAFile}.", 1, MostMonths);
        var ics = new Option<string?>("--ics") { Description = "Write a calendar file (iCalendar) instead, for a calendar program.", HelpName = "FILE" };
        var replace = new Option<bool>("--replace") { Description = "Replace the calendar file where it is already there." };
        var command = new PaydayCommand(
            "calendar",
            "Show paydays, fill days, bills and minimums of the coming months, or write them as a calendar file.",
            "payday calendar --ics payday.ics --replace") { months, ics, replace };
        return Invocation.Does(command, shell, call =>
        {
            int? asked = call.Parsed.GetValue(months);
            bool replaces = call.Parsed.GetValue(replace);
            return call.Parsed.GetValue(ics) is { } file ? call.OnLook(book => Written(call, book, asked ?? MonthsInAFile, file, replaces))
                : replaces ? new Answer.WrongUse("--replace goes with --ics.")
                : call.OnLook(book => CalendarAnswer.Of(book, shell.Today(), asked ?? CalendarReport.Months));
        });
    }

    private static Answer Written(Invocation call, Book book, int months, string path, bool replace)
    {
        StoreFolder own = call.Folder;
        LocalDate today = call.Shell.Today();

        // A book from before books had names is known by the day on which it began.
        string name = BookStore.NameOf(own) is { Length: > 0 } known ? known : LocalDatePattern.Iso.Format(book.Household.Start);
        var days = HouseholdDays.Between(book, today, today.PlusMonths(months));
        byte[] file = CalendarFile.Write(book.Household.Name, name, days, Instant.FromDateTimeOffset(own.Clock.GetUtcNow()));
        Result<string> written = OutputFile.Write(own, path, file, replace);
        if (!written.Ok)
        {
            return Answer.Because(written.Fault is FileThere there ? there.Saying("give another name, or add --replace") : FaultTexts.Of(written.Fault));
        }

        string done = $"Written to {written.Value}: {days.Length} entries up to {Text.DateText.Day(today.PlusMonths(months))}.";
        return new Answer.Done([done], JsonSerializer.Serialize(new DoneResult(done), ResultJson.Readable.DoneResult)) { HasChanged = true };
    }
}
