using System.CommandLine;
using System.Text.Json;
using Payday.Json;

namespace Payday.Commands;

/// <summary><c>payday completion</c>: a script by which a shell completes commands, options and names.</summary>
internal static class CompletionCommand
{
    // The program itself knows what can follow: "[suggest:POSITION]" is System.CommandLine's own directive.
    // A name is a person's text: it is never a word list of the shell's, which runs what stands in it.
    private const string Bash = """
        _payday() {
            local word="${COMP_WORDS[COMP_CWORD]}" before="${COMP_LINE:0:COMP_POINT}" one quoted
            COMPREPLY=()
            before="${before%"$word"}"
            [[ $before == *= ]] && return
            if [[ $before == *\\* ]]; then
                before=
                for one in "${COMP_WORDS[@]:0:COMP_CWORD}"; do
                    [[ $one == *\\* ]] && one="\"${one//\\/}\""
                    before+="$one "
                done
            fi
            while IFS= read -r one; do
                [[ $one == -* && $word != -* ]] && continue
                printf -v quoted %q "$one"
                if [[ $word == [\"\']* ]]; then
                    [[ $one == "${word:1}"* ]] && COMPREPLY+=("$one")
                elif [[ $quoted == "$word"* ]]; then
                    COMPREPLY+=("$quoted")
                fi
            done < <(payday "[suggest:${#before}]" "$before" 2>/dev/null)
            [[ ${COMPREPLY[0]-} == *= ]] && compopt -o nospace 2>/dev/null
            return 0
        }
        complete -o default -F _payday payday
        """;

    private const string Zsh = """
        _payday() {
            local -a words_known
            words_known=("${(@f)$(payday "[suggest:${CURSOR}]" "${BUFFER}" 2>/dev/null)}")
            [[ $PREFIX == -* ]] || words_known=("${(@)words_known:#-*}")
            compadd -S '' -- "${(@M)words_known:#*=}"
            compadd -- "${(@)words_known:#*=}"
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
            "Print a script that completes commands, options, and the names of pots, bills and debts.",
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
