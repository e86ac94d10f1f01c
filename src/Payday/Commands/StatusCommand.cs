using System.CommandLine;
using System.Text.Json;
using Humanizer;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Status;
using Payday.Json;
using Payday.Reports;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday status</c>: one line, for a shell's prompt or a task that runs each morning.</summary>
internal static class StatusCommand
{
    // For the prompt of a shell, or a bar of the desktop.
    private const int Longest = 120;
    private const string Between = " · ";

    public static Command Build(CommandShell shell) => Invocation.Does(
        new PaydayCommand(
            "status",
            "Say in one line what is next and what waits. Exit code 1: a payday, a count, a fill, cash to pay back or a payment on a debt waits; 0: nothing does; 3: it can't be read.",
            "payday status"),
        shell,
        call => call.OnLook(book => Of(book, call.Shell.Today())),
        codeAnswers: true);

    private static Answer Of(Book book, LocalDate today)
    {
        BookStatus status = BookStatus.Of(book, today);
        NumberStyle style = book.Household.Settings.Numbers;
        string line = OneLine([.. Waiting(status, style)], [.. OfTheBank(status, style)]);
        string json = JsonSerializer.Serialize(
            new StatusResult(
                status.IsWaiting,
                Iso(status.NextPayday),
                status.PaydayDue,
                Iso(status.CountOpenSince),
                status.FillsWaiting,
                status.OwedBack.ToPlain(),
                status.OpenDifferences,
                status.Bank is { } bank ? new BankResult(LocalDatePattern.Iso.Format(bank.Date), bank.Difference.ToPlain(), bank.Name.Length == 0 ? null : bank.Name, bank.IsExplained) : null,
                [.. PaymentToMake.Of(book).Select(payment => new PaymentToMakeResult(payment.DebtId.Text, EndText.Debt(book.Household, payment.DebtId), payment.Amount.ToPlain(), LocalDatePattern.Iso.Format(payment.Since)))],
                status.OnTheWay is { } way ? new OnTheWayResult((way.In - way.Out).ToPlain(), way.Bank.ToPlain()) : null),
            ResultJson.Readable.StatusResult);
        return status.IsWaiting ? new Answer.Waiting([line], json) : new Answer.Done([line], json);
    }

    // What waits is all said; of the bank so much as there is room for, as JSON has all of it.
    private static string OneLine(string[] waiting, string[] ofTheBank)
    {
        string line = string.Join(Between, waiting);
        foreach (string part in ofTheBank.TakeWhile(part => TextColumns.Width(line) + TextColumns.Width(part) + Between.Length <= Longest))
        {
            line += Between + part;
        }

        return line;
    }

    private static IEnumerable<string> OfTheBank(BookStatus status, NumberStyle style)
    {
        yield return ReconcileTexts.Short(status.Bank, style);
        if (status.OnTheWay is { } way)
        {
            yield return $"{(way.In - way.Out).ToString(style)} on the way, bank should show {way.Bank.ToString(style)}";
        }
    }

    private static IEnumerable<string> Waiting(BookStatus status, NumberStyle style)
    {
        yield return status.NextPayday is { } next
            ? $"payday {DateText.Weekday(next)}{(status.PaydayDue ? " is due" : "")}"
            : "no payday known";
        if (status.CountOpenSince is { } week)
        {
            yield return $"not counted since {DateText.Weekday(week)}";
        }

        if (status.FillsWaiting > 0)
        {
            yield return $"{"fill".ToQuantity(status.FillsWaiting)} to make";
        }

        if (status.OwedBack.IsPositive)
        {
            yield return $"{status.OwedBack.ToString(style)} to pay back";
        }

        if (status.ExtraToPay.IsPositive)
        {
            yield return $"{status.ExtraToPay.ToString(style)} to pay on debts";
        }

        if (status.OpenDifferences > 0)
        {
            yield return $"{"difference".ToQuantity(status.OpenDifferences)} to clear up";
        }
    }

    private static string? Iso(LocalDate? date) => date is { } known ? LocalDatePattern.Iso.Format(known) : null;
}
