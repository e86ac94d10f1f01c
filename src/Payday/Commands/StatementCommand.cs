using System.CommandLine;
using System.CommandLine.Parsing;
using Payday.Core.Amounts;
using Payday.Files;
using Payday.Statements.Files;

namespace Payday.Commands;

/// <summary><c>payday statement</c>: what is in a bank's files, held against the book and taken into it; the rules that are kept for their lines.</summary>
internal static class StatementCommand
{
    private const int MostChoices = 20;

    public static Command Build(CommandShell shell)
    {
        var files = new Argument<string[]>("FILE") { Description = "Files from the bank: CSV, OFX, camt.053, camt.052 or MT940.", Arity = ArgumentArity.ZeroOrMore };
        var read = new Option<bool>("--read") { Description = "Say what is in the files, and nothing else; it opens no household." };
        var currency = new Option<string>("--currency") { Description = "The account's currency, where a file names none. Default: the household's.", HelpName = "CODE" };
        Option<int[]> choose = OptionValues.Counts("--choose", "The reading to take where a file leaves more than one: its number. Once more for each further question.", 1, MostChoices, "N");
        var account = new Option<string>("--account") { Description = "The household's account, where the files are of several.", HelpName = "NUMBER" };
        var balance = new Option<string>("--balance") { Description = "The bank's balance after the last line, where the file has none.", HelpName = "AMOUNT" };
        var take = new Option<string[]>("--take")
        {
            Description = "What line N becomes: a pot, bill, debt, income source, buffer, fee, interest, gift, transfer, income, \"cash POT\" for cash fetched or brought, \"cash return\", or a line of the account as \"line 12\". Cash, a debt and a transfer may name who gives or gets it: \"cash Food from Reserve\"; cash its notes: \"cash Food in 20=2\". N alone takes what is proposed.",
            HelpName = "N=WHAT",
        };
        Option<int[]> leave = OptionValues.Counts("--leave", "A line to leave.", 1, int.MaxValue, "N");
        var rule = new Option<string[]>("--rule") { Description = "Keep a rule: lines with these words, or this mandate, become that.", HelpName = "WORDS=WHAT" };
        var drop = new Option<string[]>("--drop-rule") { Description = "Drop the rule of these words.", HelpName = "WORDS" };
        var rules = new Option<bool>("--rules") { Description = "List the rules that are kept." };
        var accept = new Option<bool>("--accept") { Description = "Take it: what is matched, what is proposed as sure, and what --take says. The rest is left." };
        var undo = new Option<bool>("--undo") { Description = "Take back the statements taken last, as a whole." };
        var command = new PaydayCommand(
            "statement",
            "Read bank statements, compare them with the book, and take them into it: what the book has, what is new, and what that becomes. It reconciles the account.",
            "payday statement march.csv --take 3=Food --accept")
        {
            files, read, currency, choose, account, balance, take, leave, rule, drop, rules, accept, undo,
        };
        return Invocation.Does(command, shell, call =>
        {
            ParseResult parsed = call.Parsed;
            string[] paths = parsed.GetValue(files) ?? [];
            Currency? named = null;
            if (parsed.GetValue(currency) is { } code)
            {
                if (!Currency.KnownCodes.Contains(code) || !Currency.TryFromCode(code, out Currency known))
                {
                    return new Answer.WrongUse($"--currency {code}: that is no currency known here; write one of {string.Join(", ", Currency.KnownCodes)}.");
                }

                named = known;
            }

            StatementInput Read(ReadingOptions options) => StatementInput.Read(
                paths, path => CommandInput.Bytes(shell, path, StatementInput.MostBytes), options with { Currency = named ?? options.Currency, Today = shell.Today() }, parsed.GetValue(choose) ?? []);
            var wish = new TakeInput(
                parsed.GetValue(account), parsed.GetValue(balance), parsed.GetValue(take) ?? [], parsed.GetValue(leave) ?? [], parsed.GetValue(rule) ?? [], parsed.GetValue(accept));
            string[] dropped = parsed.GetValue(drop) ?? [];
            if (parsed.GetValue(read))
            {
                return paths.Length == 0 || parsed.GetValue(undo) || parsed.GetValue(rules) || dropped.Length > 0 || !wish.IsEmpty
                    ? new Answer.WrongUse("--read takes files, and no other option but --currency and --choose.")
                    : StatementAnswers.Read(Read(ReadingOptions.None));
            }

            if (parsed.GetValue(undo))
            {
                return paths.Length > 0 || !wish.IsEmpty || dropped.Length > 0 ? new Answer.WrongUse("Give --undo alone.") : call.OnBook((store, book) => TakeAnswers.Undo(store, book, shell.Today()));
            }

            return paths.Length > 0 ? dropped.Length > 0 || parsed.GetValue(rules)
                    ? new Answer.WrongUse("Give --rules and --drop-rule without files.")
                    : call.OnBook(wish.Accepts, (store, book) => TakeAnswers.Of(store, book, Read, wish, shell.Today()))
                : wish with { Rules = [] } is { IsEmpty: false } ? new Answer.WrongUse("Name a file of the bank's.")
                : wish.Rules.Length == 0 && dropped.Length == 0 && !parsed.GetValue(rules) ? new Answer.WrongUse("Name a file of the bank's, or list the rules with --rules.")
                : call.OnBook(wish.Rules.Length + dropped.Length > 0, (store, book) => RuleAnswers.Of(store, book, wish.Rules, dropped));
        });
    }
}
