using System.CommandLine;
using System.Text.Json;
using Humanizer;
using Payday.Json;
using Payday.Reports;
using Payday.Store.Checks;
using Payday.Store.Folders;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday check</c>: a look at all that is stored.</summary>
internal static class CheckCommand
{
    public static Command Build(CommandShell shell)
    {
        var mend = new Option<bool>("--mend") { Description = "Mend what can be mended; damaged files are kept aside." };
        var command = new PaydayCommand(
            "check",
            "Check all that is stored: journal, database, ledger, slips, backups, permissions. Exit code 1: something is wrong.",
            "payday check") { mend };
        return Invocation.Does(command, shell, call => call.Folder.HasBook
            ? Run(call.Folder, call.Parsed.GetValue(mend))
            : call.NoHousehold());
    }

    private static Answer Run(StoreFolder folder, bool mend)
    {
        string[] mended = mend ? [.. StoreCheck.Mend(folder).Select(StoreTexts.Of)] : [];
        CheckReport report = StoreCheck.Run(folder);
        string[] lines =
        [
            .. mended.SelectMany(Report.Prose),
            $"Checked: {"change".ToQuantity(report.Changes)}, {"ledger line".ToQuantity(report.Movements)}, {"closed payday".ToQuantity(report.ClosedPaydays)}, {"backup".ToQuantity(report.Backups)}.",
            .. report.Findings.SelectMany(Told),
            .. report.Findings.IsEmpty ? ["Nothing is wrong."] : Array.Empty<string>(),
        ];
        string json = JsonSerializer.Serialize(
            new CheckResult(
                report.Findings.IsEmpty,
                report.Changes,
                report.Movements,
                report.ClosedPaydays,
                report.Backups,
                [.. report.Findings.Select(finding => new FindingResult(CheckTexts.Of(finding.Part), CheckTexts.What(finding), CheckTexts.Of(finding.Since), CheckTexts.Of(finding.Then)))],
                mended),
            ResultJson.Readable.CheckResult);
        return (report.Findings.IsEmpty ? new Answer.Done(lines, json) : (Answer)new Answer.Waiting(lines, json)) with { HasChanged = mended.Length > 0 };
    }

    private static IEnumerable<string> Told(Finding finding) =>
        Report.Prose($"! {CheckTexts.Of(finding.Part)}: {CheckTexts.What(finding)}{(finding.Since is null ? "" : $" Since: {CheckTexts.Of(finding.Since)}.")} {CheckTexts.Of(finding.Then)}");
}
