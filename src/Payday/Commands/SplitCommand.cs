using System.CommandLine;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Pots;
using Payday.Json;

namespace Payday.Commands;

/// <summary><c>payday split</c>: the week split as a calculator.</summary>
internal static class SplitCommand
{
    private const int MostWeeks = 520;

    public static Command Build(CommandShell shell)
    {
        var amount = new Argument<string>("AMOUNT") { Description = "What to divide." };
        var weeks = new Option<string>("--weeks") { Description = "Over how many weeks.", HelpName = "N", Required = true };
        var unit = new Option<string>("--unit") { Description = "The smallest note.", HelpName = "U", Required = true };
        var currency = new Option<string>("--currency") { Description = "The currency, which sets the decimals.", HelpName = "CODE", DefaultValueFactory = _ => "USD" };
        var command = new Command("split", CommandTree.Help(
            "Divide an amount over weeks in whole notes; what is less than a note is kept back.",
            "payday split 70 --weeks 4 --unit 10")) { amount, weeks, unit, currency };
        return Invocation.Does(command, shell, call => Run(
            call.Parsed.GetRequiredValue(amount),
            call.Parsed.GetRequiredValue(weeks),
            call.Parsed.GetRequiredValue(unit),
            call.Parsed.GetRequiredValue(currency)));
    }

    private static Answer Run(string amountText, string weeksText, string unitText, string code)
    {
        if (!Currency.TryFromCode(code, out Currency currency))
        {
            return Answer.Because($"--currency {code}: that is no currency known here; write one of {string.Join(", ", Currency.KnownCodes)}.");
        }

        Read<Money> amount = CommandInput.Amount("AMOUNT", amountText, currency);
        Read<int> weeks = CommandInput.Count("--weeks", weeksText, 1, MostWeeks);
        Read<Money> unit = CommandInput.Amount("--unit", unitText, currency);
        if ((amount.Fault ?? weeks.Fault ?? unit.Fault) is { } fault)
        {
            return Answer.Because(fault);
        }

        if (unit.Value.IsZero)
        {
            return Answer.Because("--unit 0: write the value of the smallest note, above zero.");
        }

        WeekShares split = WeekSplit.Split(amount.Value, weeks.Value, unit.Value);
        return new Answer.Done(
            [
                .. split.Shares.Select((share, i) => $"week {i + 1}: {share.ToPlain()}"),
                $"kept back: {split.KeptBack.ToPlain()}",
            ],
            JsonSerializer.Serialize(
                new SplitResult([.. split.Shares.Select(share => share.ToPlain())], split.KeptBack.ToPlain()),
                ResultJson.Default.SplitResult));
    }
}
