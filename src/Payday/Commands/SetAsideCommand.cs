using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime.Text;
using Payday.Calculators;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Commands;

/// <summary><c>payday setaside</c>: the set-aside plan as a calculator.</summary>
internal static class SetAsideCommand
{
    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string>("FILE") { Description = "Paydays and dues as JSON, - for standard input." };
        var mode = new Option<string>("--mode") { Description = "How money is set aside: level, an even part of every pay; or as-they-fall, when due.", HelpName = "MODE", DefaultValueFactory = _ => "level" };
        mode.LimitTo("level", "as-they-fall");
        var command = new PaydayCommand(
            "setaside",
            "Plan what each payday sets aside so that every due is there in time.",
            "payday setaside dues.json") { file, mode };
        return Invocation.Does(command, shell, call => CommandInput.WithJson(
            shell,
            call.Parsed.GetRequiredValue(file),
            SetAsideFile.Read,
            input => Plan(input, call.Parsed.GetValue(mode) == "level" ? SetAsideMode.Level : SetAsideMode.AsTheyFall)));
    }

    private static Answer Plan(SetAsideFile input, SetAsideMode mode)
    {
        SetAsidePlan plan = SetAsidePlanner.Plan(mode, input.Held, input.Paydays, input.Dues);
        return new Answer.Done(
            [
                .. Report.Table(
                    NumberStyle.CommaPoint,
                    [new("Payday"), Report.Amounts("due"), Report.Amounts("set aside"), Report.Amounts("in all")],
                    plan.Rows.Select(row => ImmutableArray.Create(
                        DateText.Long(row.Date), Shown(row.Due), Shown(row.SetAside), Shown(row.HeldAfter)))),
                .. plan.Late.SelectMany(late => Report.Prose($"! {late.Due.Name}, {DateText.Long(late.Due.Date)}: {Shown(late.Short)} short")),
            ],
            JsonSerializer.Serialize(
                new SetAsideResult(
                    [.. plan.Rows.Select(row => new SetAsideRowResult(
                        LocalDatePattern.Iso.Format(row.Date), row.Due.ToPlain(), row.SetAside.ToPlain(), row.HeldAfter.ToPlain()))],
                    [.. plan.Late.Select(Late)]),
                ResultJson.Readable.SetAsideResult));
    }

    /// <summary>A late due for a script.</summary>
    public static LateResult Late(LateDue late) =>
        new(late.Due.Name, LocalDatePattern.Iso.Format(late.Due.Date), late.Short.ToPlain());

    private static string Shown(Money amount) => amount.ToString(NumberStyle.CommaPoint);
}
