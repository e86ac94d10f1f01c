using System.CommandLine;
using System.Text.Json;
using Payday.Json;

namespace Payday.Commands;

/// <summary><c>payday completion</c>: a script by which a shell completes commands and options.</summary>
internal static class CompletionCommand
{
    // The program itself knows what can follow: "[suggest:POSITION]" is System.CommandLine's own directive.
    private const string Bash = """
        _payday() {
            local IFS=$'\n' word="${COMP_WORDS[COMP_CWORD]}" known
            known="$(payday "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)"
            [[ $word == -* ]] || known="$(grep -v '^-' <<< "$known")"
            COMPREPLY=($(compgen -W "$known" -- "$word"))
        }
        complete -o default -F _payday payday
        """;

    private const string Zsh = """
        _payday() {
            local -a words_known
            words_known=("${(@f)$(payday "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
            [[ $PREFIX == -* ]] || words_known=("${(@)words_known:#-*}")
            compadd -a words_known
            _files
        }
        compdef _payday payday
        """;

    private const string Fish = """
        complete -c payday -a '(payday "[suggest:"(commandline -C)"]" (commandline -cp) 2>/dev/null)'
        """;

    public static Command Build(CommandShell shell)
    {
        var name = new Argument<string>("SHELL") { HelpName = "SHELL", Description = "bash, zsh or fish." };
        name.LimitTo("bash", "zsh", "fish");
        var command = new PaydayCommand(
            "completion",
            "Print a script that completes commands and options.",
            "source <(payday completion bash)") { name };
        return Invocation.Does(command, shell, call =>
        {
            string script = call.Parsed.GetRequiredValue(name) switch
            {
                "bash" => Bash,
                "zsh" => Zsh,
                _ => Fish,
            };
            return new Answer.Done(script.Split('\n'), JsonSerializer.Serialize(new DoneResult(script), ResultJson.Readable.DoneResult));
        });
    }
}
