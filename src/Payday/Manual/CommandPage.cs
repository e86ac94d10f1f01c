using System.CommandLine;
using System.CommandLine.Help;

namespace Payday.Manual;

/// <summary>payday(1): all commands with their arguments and options, made from the tree that reads the command line.</summary>
internal static class CommandPage
{
    /// <summary>What man calls it.</summary>
    public const string Name = "payday";

    /// <summary>The page, a line each.</summary>
    /// <param name="root">The program with its commands.</param>
    /// <param name="version">Which version it is.</param>
    /// <param name="example">The example of a command, or null.</param>
    public static IEnumerable<string> Lines(RootCommand root, ProgramVersion version, Func<Command, string?> example) =>
    [
        $".TH PAYDAY 1 {version.Date} {Roff.Quoted("Payday " + version.Number)} \"User Commands\"",
        .. Roff.AsWritten,
        ".SH NAME",
        "payday \\- zero\\-based cash budget of a household",
        ".SH SYNOPSIS",
        $"{Roff.Bold(Name)} {string.Join(' ', root.Options.Where(IsOwn).Select(option => $"[{Usage(option)}]"))} [{Roff.Italic("COMMAND")} [{Roff.Italic("ARGUMENT")} ...]]",
        ".SH DESCRIPTION",
        Roff.Text(root.Description ?? ""),
        ".PP",
        Roff.Text("Without a command it opens the full screen, which says its keys on the last line and explains them under `?`; without a terminal, or where `TERM` is dumb, it shows the overview of `payday show`."),
        Roff.Text("The words of a person's household, such as the name of a pot, are given as they are called there; capitals don't matter."),
        ".SH OPTIONS",
        .. root.Options.SelectMany(Item),
        ".SH COMMANDS",
        .. root.Subcommands.SelectMany(command => Section(command, command.Name, example)),
        .. End.Select(line => line.StartsWith('.') ? line : Roff.Text(line)),
    ];

    /// <summary>A command's line of use, such as <c>payday backup [DIR] [--always]</c>, in roff.</summary>
    public static string Usage(Command command, string name) => string.Join(' ',
    [
        Roff.Bold("payday " + name),
        .. command.Subcommands.Count > 0 ? [Roff.Italic("COMMAND")] : Array.Empty<string>(),
        .. command.Arguments.Where(argument => !argument.Hidden).Select(Usage),
        .. command.Options.Where(IsOwn).Select(option => option.Required ? Usage(option) : $"[{Usage(option)}]"),
    ]);

    private static IEnumerable<string> Section(Command command, string name, Func<Command, string?> example) =>
    [
        $".SS {Roff.Quoted("payday " + name)}",
        Usage(command, name),
        ".PP",
        Roff.Text(command.Description ?? ""),
        .. command.Arguments.Where(argument => !argument.Hidden).SelectMany(argument => (string[])[".TP", Roff.Italic(NameOf(argument)), Roff.Text(argument.Description ?? "")]),
        .. command.Options.Where(IsOwn).SelectMany(Item),
        .. example(command) is { } line ? [".PP", "Example:", ".PP", ".RS", ".nf", Roff.Text(line), ".fi", ".RE"] : Array.Empty<string>(),
        .. command.Subcommands.SelectMany(inner => Section(inner, $"{name} {inner.Name}", example)),
    ];

    private static string[] Item(Option option) =>
        [".TP", string.Join(", ", option.Aliases.Prepend(option.Name).Select(Roff.Bold)) + Value(option), Roff.Text(Sentence(option.Description))];

    // What the library says of its own options ends without a full stop.
    private static string Sentence(string? text) => text is not { Length: > 0 } ? "" : text.EndsWith('.') ? text : text + ".";

    private static string Usage(Option option) => Roff.Bold(option.Name) + Value(option) + (option.Arity.MaximumNumberOfValues > 1 ? " ..." : "");

    private static string Usage(Argument argument)
    {
        string one = Roff.Italic(NameOf(argument)) + (argument.Arity.MaximumNumberOfValues > 1 ? " ..." : "");
        return argument.Arity.MinimumNumberOfValues == 0 ? $"[{one}]" : one;
    }

    private static string Value(Option option) => option.HelpName is not { Length: > 0 } name ? ""
        : option.Arity.MinimumNumberOfValues == 0 ? $" [{Roff.Italic(name)}]" : " " + Roff.Italic(name);

    private static string NameOf(Argument argument) => argument.HelpName ?? argument.Name;

    private static bool IsOwn(Option option) => !option.Hidden && option is not (HelpOption or VersionOption);

    private static IEnumerable<string> End =>
    [
        ".SH EXIT STATUS",
        ".TP", "`0`", "It was done. Something that was changed is never told as refused: where the answer can't be written, standard error says so.",
        ".TP", "`1`", "It was refused, with the reason on standard error, and nothing is changed; or, of `status` and `check`, something waits or is wrong.",
        ".TP", "`2`", "The command was not called right.",
        ".TP", "`3`", "Of `status`: what is stored can't be read.",
        ".SH ENVIRONMENT",
        ".TP", "`XDG_DATA_HOME`", "The folder that the data folder is in, where it is a full path. Default: .local/share in the home folder.",
        ".TP", "`HOME`", "The home folder. Where it is not set, missing or another user's, this is said, and no other folder is taken in its place.",
        ".TP", "`NO_COLOR`", "Where it is set and not empty, there are no colours.",
        ".TP", "`TERM`", "Where it is dumb, there is no full screen.",
        ".TP", "`LC_ALL`, `LC_CTYPE`, `LANG`", "Lines and bars are drawn where the first of these that is set names UTF-8, else with ASCII; their region says what is usual for a new household.",
        ".TP", "`PATH`", "Where the printer's program, lp, is looked for.",
        ".SH FILES",
        "In the data folder, which is readable by its owner alone:",
        ".TP", "`payday.db`", "The database.",
        ".TP", "`payday.journal`", "Every change, a line of JSON each, synced to disk before the change counts as stored; the database can be rebuilt from it alone.",
        ".TP", "`start.json`", "A household that is being set up for the first time.",
        ".TP", "`payday.snapshot`", "What is stored, packed for quick opening; it is made anew where it is missing.",
        ".TP", "`backups/`", "The journal, packed, from before each closed payday.",
        ".TP", "`aside/`", "What others took the place of, such as damaged files.",
        ".TP", "`payday.lock`, `payday.holder`", "Who has the folder open.",
        ".SH NOTES",
        "Arithmetic, not financial advice: the lender's statement, the bank's terms and local rules decide.",
        ".SH SEE ALSO",
        ".BR payday\\-household (5)",
    ];
}
