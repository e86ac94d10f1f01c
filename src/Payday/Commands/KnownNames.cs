using System.CommandLine;
using System.CommandLine.Completions;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Text;

namespace Payday.Commands;

/// <summary>Offers the names of the household where the shell completes an argument or an option that takes one.</summary>
internal static class KnownNames
{
    // What goes by another word than what it takes.
    private static readonly Dictionary<string, Func<Household, IEnumerable<string>>> Named = new()
    {
        ["due NAME"] = house => [.. Bills(house), .. Debts(house)],
        ["move FROM"] = house => [.. Pots(house), .. Bills(house), PotInput.Buffer],
        ["move TO"] = house => [.. Pots(house), .. Bills(house), .. Debts(house), PotInput.Buffer],
        ["entry --for"] = house => [.. Pots(house), .. Bills(house), .. Debts(house), .. Sources(house), PotInput.Buffer],
        ["ahead --if"] = house => [.. Bills(house), .. Sources(house)],
        ["run --income"] = Sources,
        ["run --bill"] = Bills,
        ["run --debt"] = Debts,
        ["run --pot"] = Pots,
        ["run --paid"] = house => [.. Bills(house), .. Debts(house)],
    };

    /// <summary>Lets all arguments and options of some commands that take a name offer those that there are.</summary>
    /// <remarks>The book is only looked at: nothing is locked, mended or made for a question of the shell.</remarks>
    public static void OfferIn(Command above, CommandShell shell)
    {
        ArgumentNullException.ThrowIfNull(above);
        foreach (Command command in above.Subcommands)
        {
            foreach (Argument argument in command.Arguments)
            {
                string takes = argument.HelpName ?? argument.Name;
                Offer(shell, argument.CompletionSources, $"{command.Name} {argument.Name}", takes);
            }

            foreach (Option option in command.Options)
            {
                Offer(shell, option.CompletionSources, $"{command.Name} {option.Name}", option.HelpName ?? "");
            }

            OfferIn(command, shell);
        }
    }

    private static void Offer(CommandShell shell, List<Func<CompletionContext, IEnumerable<CompletionItem>>> sources, string place, string takes)
    {
        Func<Household, IEnumerable<string>>? names = Named.GetValueOrDefault(place) ?? takes.Split('=', ' ')[0] switch
        {
            "POT" when takes.Contains('|', StringComparison.Ordinal) => house => [.. Pots(house), PotInput.Buffer],
            "POT" => Pots,
            "BILL" => Bills,
            "DEBT" => Debts,
            _ => null,
        };
        if (names is not null)
        {
            // NAME=AMOUNT goes on behind the name; POT AMOUNT | POT=AMOUNT may.
            string end = takes.Contains('=', StringComparison.Ordinal) && !takes.Contains('|', StringComparison.Ordinal) ? "=" : "";
            sources.Add(context => Look(shell, context.ParseResult) is { } book
                ? names(book.Household).Distinct().Select(name => new CompletionItem(CleanText.OneLine(name) + end))
                : []);
        }
    }

    private static Book? Look(CommandShell shell, ParseResult parsed)
    {
        try
        {
            StoreFolder folder = new Invocation(shell, parsed).Folder;
            return folder.HasBook ? BookStore.Peek(folder).Book : null;
        }
        catch (Exception fault) when (fault is StoreException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            // A shell shows nothing but names; the command itself says what is wrong.
            return null;
        }
    }

    private static IEnumerable<string> Pots(Household household) => household.Pots.Select(pot => pot.Name);

    private static IEnumerable<string> Bills(Household household) => household.Bills.Select(bill => bill.Name);

    private static IEnumerable<string> Debts(Household household) => household.Debts.Select(debt => debt.Name);

    private static IEnumerable<string> Sources(Household household) => household.Sources.Select(source => source.Name);
}
