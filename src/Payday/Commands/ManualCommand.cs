using System.CommandLine;
using System.Text.Json;
using Payday.Json;
using Payday.Manual;

namespace Payday.Commands;

/// <summary><c>payday manual</c>: the manual's pages, as man reads them.</summary>
internal static class ManualCommand
{
    /// <summary>Builds it for a program.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="root">The program, whose commands are on the page; also those that it gets after this one.</param>
    public static Command Build(CommandShell shell, RootCommand root)
    {
        var page = new Argument<string?>("PAGE")
        {
            HelpName = "PAGE",
            Description = $"{CommandPage.Name} for the commands, {HouseholdPage.Name} for the household file. Default: {CommandPage.Name}.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        page.LimitTo(CommandPage.Name, HouseholdPage.Name);
        var command = new PaydayCommand(
            "manual",
            "Print a page of the manual, for man to show or to keep.",
            "payday manual payday-household > payday-household.5") { page };
        return Invocation.Does(command, shell, call =>
        {
            string[] lines = [.. Page(root, call.Parsed.GetValue(page) ?? CommandPage.Name)];
            return new Answer.Done(lines, JsonSerializer.Serialize(new DoneResult(string.Join('\n', lines)), ResultJson.Readable.DoneResult));
        });
    }

    private static IEnumerable<string> Page(RootCommand root, string name)
    {
        ProgramVersion version = ProgramVersion.OfProgram();
        return name == HouseholdPage.Name
            ? HouseholdPage.Lines(version)
            : CommandPage.Lines(root, version, command => (command as IExample)?.Example);
    }
}
