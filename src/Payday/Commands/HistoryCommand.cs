using System.CommandLine;
using System.Text.Json;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Histories;
using Payday.Core.Pots;
using Payday.Json;
using Payday.Reports;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday history</c>: what happened to one pot.</summary>
internal static class HistoryCommand
{
    public static Command Build(CommandShell shell)
    {
        var name = new Argument<string>("POT") { Description = "The pot." };
        var command = new PaydayCommand(
            "history",
            "Show what happened to a pot: what was spent up to each count, and every fill, purchase and move.",
            "payday history Food") { name };
        return Invocation.Does(command, shell, call => call.OnLook(book =>
        {
            Result<Pot> pot = PotInput.Pot(book.Household, call.Parsed.GetRequiredValue(name));
            return pot.Ok ? Of(book, pot.Value) : Answer.Wrong(pot.Fault, book.Household.Settings.Numbers);
        }));
    }

    private static Answer.Done Of(Book book, Pot pot)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        PotHistory history = PotHistory.Of(book, pot.Id);
        return new Answer.Done(
            [.. Report.Heading($"History of {pot.Name}", HistoryReport.Average(history, style)), .. HistoryReport.Lines(history, style, Report.Width)],
            JsonSerializer.Serialize(
                new HistoryResult(
                    pot.Name,
                    history.Weeks,
                    history.SpentAWeek?.ToPlain(),
                    [.. history.Lines.Select(line => new HistoryLineResult(
                        LocalDatePattern.Iso.Format(line.Date),
                        JsonNamingPolicy.CamelCase.ConvertName(line.Kind.ToString()),
                        line.Amount.ToPlain(),
                        line.Left?.ToPlain(),
                        history.On(line.Date)?.ToPlain(),
                        line.What))]),
                ResultJson.Readable.HistoryResult));
    }
}
