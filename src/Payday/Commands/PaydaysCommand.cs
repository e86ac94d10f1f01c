using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Calculators;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Ids;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday paydays</c>: the pay calendar, of a file or of the household.</summary>
internal static class PaydaysCommand
{
    private const int MostYears = 100;

    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string?>("FILE") { Description = "Sources and schedules as JSON, - for standard input. Default: the household.", Arity = ArgumentArity.ZeroOrOne };
        Option<LocalDate?> from = OptionValues.Date("--from", "The first date.");
        Option<LocalDate?> to = OptionValues.Date("--to", "The last date.");
        from.Required = true;
        to.Required = true;
        var command = new PaydayCommand(
            "paydays",
            "List the paydays between two dates, extra ones marked.",
            "payday paydays --from 2026-01-01 --to 2026-12-31") { file, from, to };
        return Invocation.Does(command, shell, call =>
        {
            LocalDate first = call.Parsed.GetValue(from)!.Value;
            LocalDate last = call.Parsed.GetValue(to)!.Value;
            if (last < first || Period.Between(first, last, PeriodUnits.Years).Years >= MostYears)
            {
                return new Answer.WrongUse($"--to must be --from or later, and less than {MostYears} years after it.");
            }

            return call.Parsed.GetValue(file) is { } path
                ? CommandInput.WithJson(shell, path, PaydaysFile.Read, input => List(input.Sources, input.Holidays, first, last))
                : call.OnLook(book => List(book.Household.Sources, book.Household.Settings.Holidays, first, last));
        });
    }

    private static Answer List(ImmutableArray<IncomeSource> sources, HolidayRules holidays, LocalDate from, LocalDate to)
    {
        ImmutableArray<ScheduledPayday> paydays = PayCalendar.Paydays(sources, BankHolidays.From(holidays), from, to);
        Dictionary<SourceId, string> names = sources.ToDictionary(source => source.Id, source => source.Name);
        return new Answer.Done(
            paydays.IsEmpty
                ? ["There is no payday between these dates."]
                : [.. Report.Table(
                    NumberStyle.CommaPoint,
                    [new("Payday"), Report.Names("from"), new("")],
                    paydays.Select(payday => ImmutableArray.Create(
                        DateText.Long(payday.Date),
                        string.Join("; ", payday.Sources.Select(source => names[source])),
                        payday.IsExtra ? "extra payday" : "")))],
            JsonSerializer.Serialize(
                new PaydaysResult([.. paydays.Select(payday => new PaydayResult(
                    LocalDatePattern.Iso.Format(payday.Date), [.. payday.Sources.Select(source => names[source])], payday.IsExtra))]),
                ResultJson.Readable.PaydaysResult));
    }
}
