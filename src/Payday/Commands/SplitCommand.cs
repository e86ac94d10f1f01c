using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday split</c>: the week split as a calculator.</summary>
internal static class SplitCommand
{
    private const int MostWeeks = 520;

    public static Command Build(CommandShell shell)
    {
        var amount = new Argument<string>("AMOUNT") { Description = "What to divide." };
        Option<int?> weeks = OptionValues.Count("--weeks", "Over how many weeks.", 1, MostWeeks);
        weeks.Required = true;
        var unit = new Option<string>("--unit") { Description = "The smallest note.", HelpName = "U", Required = true };
        var currency = new Option<string>("--currency") { Description = "The currency, which sets the decimals.", HelpName = "CODE", DefaultValueFactory = _ => "USD" };
        var command = new PaydayCommand(
            "split",
            "Divide an amount over weeks in whole notes; what is less than a note is not in notes.",
            "payday split 70 --weeks 4 --unit 10") { amount, weeks, unit, currency };
        return Invocation.Does(command, shell, call => Run(
            call.Parsed.GetRequiredValue(amount),
            call.Parsed.GetValue(weeks)!.Value,
            call.Parsed.GetRequiredValue(unit),
            call.Parsed.GetRequiredValue(currency)));
    }

    private static Answer Run(string amountText, int weeks, string unitText, string code)
    {
        if (!Currency.KnownCodes.Contains(code) || !Currency.TryFromCode(code, out Currency currency))
        {
            return new Answer.WrongUse($"--currency {code}: that is no currency known here; write one of {string.Join(", ", Currency.KnownCodes)}.");
        }

        Result<Money> amount = CommandInput.Amount("AMOUNT", amountText, currency);
        Result<Money> unit = CommandInput.Amount("--unit", unitText, currency);
        if ((amount.Fault ?? unit.Fault) is { } fault)
        {
            return Answer.Wrong(fault);
        }

        if (unit.Value.IsZero)
        {
            return new Answer.WrongUse("--unit 0: write the value of the smallest note, above zero.");
        }

        WeekShares split = WeekSplit.Split(amount.Value, weeks, unit.Value);
        return new Answer.Done(
            [.. Report.Table(
                NumberStyle.CommaPoint,
                [new("Week"), Report.Amounts("amount")],
                split.Shares.Select((share, i) => ImmutableArray.Create(
                    (i + 1).ToString(CultureInfo.InvariantCulture), share.ToString(NumberStyle.CommaPoint))),
                [["Not in notes", split.KeptBack.ToString(NumberStyle.CommaPoint)]])],
            JsonSerializer.Serialize(
                new SplitResult([.. split.Shares.Select(share => share.ToPlain())], split.KeptBack.ToPlain()),
                ResultJson.Readable.SplitResult));
    }
}
