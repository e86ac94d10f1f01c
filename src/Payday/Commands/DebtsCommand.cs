using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Humanizer;
using NodaTime;
using Payday.Calculators;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Routines;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday debts</c>: the way out of debt, of a file or of the household.</summary>
internal static class DebtsCommand
{
    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string?>("FILE") { Description = "Debts as JSON, - for standard input. Default: the household.", Arity = ArgumentArity.ZeroOrOne };
        var extra = new Option<string>("--extra") { Description = "What is paid each month above all minimums.", HelpName = "AMOUNT", DefaultValueFactory = _ => "0" };
        var once = new Option<string>("--once") { Description = "What is paid once, at the start.", HelpName = "AMOUNT", DefaultValueFactory = _ => "0" };
        var order = new Option<string>("--order") { Description = "Which debt gets it first: the smallest balance, or the highest rate.", HelpName = "ORDER", DefaultValueFactory = _ => "balance" };
        order.LimitTo("balance", "rate");
        var command = new PaydayCommand(
            "debts",
            "Project debts to the month each is paid off, with all interest. The lender's statement decides.",
            "payday debts --extra 50 --order rate") { file, extra, once, order };
        return Invocation.Does(command, shell, call =>
        {
            DebtOrder first = call.Parsed.GetValue(order) == "rate" ? DebtOrder.HighestRate : DebtOrder.SmallestBalance;
            Answer For(Currency currency, NumberStyle style, YearMonth from, ImmutableArray<DebtState> debts) =>
                Project(currency, style, from, debts, call.Parsed.GetRequiredValue(extra), call.Parsed.GetRequiredValue(once), first);

            return call.Parsed.GetValue(file) is { } path
                ? CommandInput.WithJson(shell, path, DebtsFile.Read, input => For(input.Currency, NumberStyle.CommaPoint, input.From, input.Debts))
                : call.OnLook(book =>
                {
                    DebtOutlook outlook = DebtOutlook.Of(book, shell.Today());
                    return For(book.Household.Currency, book.Household.Settings.Numbers, outlook.From, outlook.Debts);
                });
        });
    }

    public static Answer Project(
        Currency currency, NumberStyle style, YearMonth from, ImmutableArray<DebtState> debts, string extraText, string onceText, DebtOrder order)
    {
        Result<Money> extra = CommandInput.Amount("--extra", extraText, currency, style);
        Result<Money> once = CommandInput.Amount("--once", onceText, currency, style);
        if ((extra.Fault ?? once.Fault) is { } fault)
        {
            return Answer.Wrong(fault);
        }

        DebtProjection course = DebtProjection.Project(from, debts, extra.Value, once.Value, order);
        Dictionary<DebtId, string> names = debts.ToDictionary(debt => debt.Id, debt => debt.Name);
        return new Answer.Done(
            Lines(course, debts, style),
            JsonSerializer.Serialize(
                new DebtsResult(
                    course.Months,
                    course.Interest.ToPlain(),
                    [.. course.Debts.Select(debt => new DebtResult(debt.Name, Iso(debt.PaidOff), debt.Interest?.ToPlain()))],
                    [.. course.Never.Select(id => names[id])]),
                ResultJson.Readable.DebtsResult));
    }

    private static ImmutableArray<string> Lines(DebtProjection course, ImmutableArray<DebtState> debts, NumberStyle style)
    {
        if (debts.IsEmpty)
        {
            return ["No debts."];
        }

        return
        [
            .. Report.Table(
                style,
                [Report.Names("Debt"), Report.Amounts("balance"), new("rate", Text.Align.Right), new("paid off"), Report.Amounts("interest")],
                course.Debts.Zip(debts).Select(pair => ImmutableArray.Create(
                    pair.First.Name,
                    pair.Second.Balance.ToString(style),
                    DebtTable.Percent(pair.Second.YearlyRate, style),
                    PaidOff(pair.First, pair.Second),
                    pair.First.Interest?.ToString(style) ?? "")),
                course.Never.Length == debts.Length
                    ? []
                    : [["Until the last that ends", "", "", "month".ToQuantity(course.Months), course.Interest.ToString(style)]]),
            .. course.Debts.Where(debt => debt.PaidOff is null).SelectMany(debt =>
                Report.Prose($"! {debt.Name} is never paid off this way. Pay more on it, or talk to the lender.")),
            "The lender's statement decides.",
        ];
    }

    private static string PaidOff(ProjectedDebt debt, DebtState before) =>
        before.Balance.IsZero ? "already"
        : debt.PaidOff is { } month ? month.ToString("MMM uuuu", CultureInfo.InvariantCulture)
        : "never";

    private static string? Iso(YearMonth? month) => month?.ToString("uuuu-MM", CultureInfo.InvariantCulture);
}
