using System.CommandLine;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Questions;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday ask</c>: the whole job line by line, for screen readers, dumb terminals and slow lines.</summary>
internal static class AskCommand
{
    public static Command Build(CommandShell shell)
    {
        var what = new Argument<string?>("what")
        {
            Description = "What to begin with. Default: what was left the last time, or else what waits.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        what.AcceptOnlyFromAmong([.. MenuPart.Words.Select(one => one.Word)]);
        return Invocation.Does(
            new PaydayCommand("ask", "Do the whole job line by line, one question at a time: for screen readers, plain terminals and slow lines.", "payday ask") { what },
            shell,
            call => call.IsForScripts
                ? new Answer.WrongUse("payday ask is for a person; scripts have payday run, count, spend and the others.")
                : Open(call, call.Parsed.GetValue(what)));
    }

    /// <summary>Asks about the person's own book.</summary>
    /// <param name="call">The call.</param>
    /// <param name="what">What to begin with; null for where it was left.</param>
    public static Answer Open(Invocation call, string? what = null) =>
        call.OnBook((store, book) => Ask(call, new BookSession(store, book, call.Shell.Today) { IsByLine = true }, what));

    /// <summary>Asks about a book until the person leaves.</summary>
    /// <param name="call">The call.</param>
    /// <param name="session">The book.</param>
    /// <param name="what">What to begin with; null for where it was left.</param>
    public static Answer Ask(Invocation call, BookSession session, string? what)
    {
        var output = new SpokenOutput(call.Shell.Out);
        var menu = new MenuPart(session);
        Result<Part>? inner = what is null ? null : menu.Into(what);
        if (inner is { Ok: false, Fault: { } fault })
        {
            return Answer.Because(FaultTexts.Of(fault, session.Style));
        }

        output.Say($"{session.Book.Household.Name}, {DateText.Long(session.Today)}.", Dialogue.Always);
        var input = new LineInput(call.Shell.In);
        new Dialogue(session, input, output).Run(menu, inner?.Value);
        return input.IsNoText
            ? Answer.Because("What was typed there is no text in UTF-8. Nothing of it was taken, all before it is kept; payday ask goes on there.")
            : new Answer.Done([session.IsThrownAway ? "What was tried in the demo household is thrown away." : "Everything is kept; payday ask goes on here."], "{}");
    }
}
