using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Calculators;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Json;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday paydays</c>: the pay calendar, of a file or of the household.</summary>
internal static class PaydaysCommand
{
    private const int MostYears = 100;

    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string?>("FILE") { Description = "Sources and schedules as JSON, - for standard input. Default: the household.", Arity = ArgumentArity.ZeroOrOne };
        var from = new Option<string>("--from") { Description = "The first date.", HelpName = "DATE", Required = true };
        var to = new Option<string>("--to") { Description = "The last date.", HelpName = "DATE", Required = true };
        var command = new Command("paydays", CommandTree.Help(
            "List the paydays between two dates, extra ones marked.",
            "payday paydays --from 2026-01-01 --to 2026-12-31")) { file, from, to };
        return Invocation.Does(command, shell, call =>
        {
            Read<LocalDate> first = CommandInput.Date("--from", call.Parsed.GetRequiredValue(from));
            Read<LocalDate> last = CommandInput.Date("--to", call.Parsed.GetRequiredValue(to));
            if ((first.Fault ?? last.Fault) is { } fault)
            {
                return Answer.Because(fault);
            }

            if (last.Value < first.Value || last.Value > first.Value.PlusYears(MostYears))
            {
                return Answer.Because($"--to must be --from or later, and at most {MostYears} years after it.");
            }

            return call.Parsed.GetValue(file) is { } path
                ? CommandInput.WithJson(shell, path, PaydaysFile.Read, input => List(input.Sources, input.Holidays, first.Value, last.Value))
                : call.OnBook((_, book) => List(book.Household.Sources, book.Household.Settings.Holidays, first.Value, last.Value));
        });
    }

    private static Answer List(ImmutableArray<IncomeSource> sources, HolidayRules holidays, LocalDate from, LocalDate to)
    {
        ImmutableArray<ScheduledPayday> paydays = PayCalendar.Paydays(sources, BankHolidays.From(holidays), from, to);
        Dictionary<string, string> names = sources.ToDictionary(source => source.Id, source => source.Name);
        return new Answer.Done(
            paydays.IsEmpty
                ? ["There is no payday between these dates."]
                : [.. paydays.Select(payday => TextColumns.PadRight(DateText.Long(payday.Date), 17)
                    + string.Join(", ", payday.Sources.Select(source => names[source])) + (payday.IsExtra ? "  (extra payday)" : ""))],
            JsonSerializer.Serialize(
                new PaydaysResult([.. paydays.Select(payday => new PaydayResult(
                    LocalDatePattern.Iso.Format(payday.Date), [.. payday.Sources.Select(source => names[source])], payday.IsExtra))]),
                ResultJson.Default.PaydaysResult));
    }
}
