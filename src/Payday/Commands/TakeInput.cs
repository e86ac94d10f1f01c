using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Statements.Taking;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What a command line says of statements to be taken.</summary>
/// <param name="Account">The account, or null.</param>
/// <param name="Balance">The bank's balance as typed, or null.</param>
/// <param name="Take">Lines with what they become, <c>N=WHAT</c> or <c>N</c>.</param>
/// <param name="Leave">Lines to be left.</param>
/// <param name="Rules">Rules to be kept, <c>WORDS=WHAT</c>.</param>
/// <param name="Accepts">Whether they are taken.</param>
internal sealed record TakeInput(string? Account, string? Balance, string[] Take, int[] Leave, string[] Rules, bool Accepts)
{
    /// <summary>How long the words of a rule may be, in characters.</summary>
    public const int LongestRule = 60;

    /// <summary>Whether nothing was said.</summary>
    public bool IsEmpty => Account is null && Balance is null && Take.Length == 0 && Leave.Length == 0 && Rules.Length == 0 && !Accepts;

    /// <summary>The plan with what was said of its lines; or what is wrong with that.</summary>
    public Result<StatementPlan> Chosen(StatementPlan plan)
    {
        foreach (string said in Take)
        {
            (string number, string? what) = said.IndexOf('=', StringComparison.Ordinal) is >= 0 and var at ? (said[..at], said[(at + 1)..]) : (said, null);
            if (Numbered(plan, number) is not { } line)
            {
                return NoLine(plan, number);
            }

            Result<Proposal> choice = what is not null ? TargetInput.Choice(plan.Book, what)
                : Proposed(line) is { } proposed ? Result.Of(proposed)
                : Result.Refused<Proposal>(new ArgumentFault.NothingProposed());
            if (!choice.Ok)
            {
                return Result.Refused<StatementPlan>(new ArgumentFault.Of($"--take {number}", choice.Fault));
            }

            plan = plan.With(line.Key, choice.Value);
        }

        foreach (int number in Leave)
        {
            string text = number.ToString(CultureInfo.InvariantCulture);
            if (Numbered(plan, text) is not { } line)
            {
                return NoLine(plan, text);
            }

            plan = plan.With(line.Key, new Proposal(LineTarget.Leave, ProposalReason.Chosen, true));
        }

        return Result.Of(plan);
    }

    /// <summary>A rule as it is typed; or what is wrong with it.</summary>
    public static Result<StatementRule> Rule(Book book, string said)
    {
        (string words, string what) = PotInput.Pair(said) is { } pair ? (pair.Name.Trim(), pair.Value.Trim()) : ("", "");
        if (words.Length == 0 || what.Length == 0 || !words.Any(char.IsLetterOrDigit))
        {
            return Result.Refused<StatementRule>(new ArgumentFault.NoPair(said, "\"corner shop=Food\""));
        }

        return words.Length > LongestRule ? Result.Refused<StatementRule>(new ArgumentFault.TooLong("--rule", words.Length, LongestRule))
            : TargetInput.Read(book, what).Map(target => new StatementRule(Text.CleanText.OneLine(words).ToLowerInvariant(), target));
    }

    // What is proposed, though it isn't sure; of an unclear line that which is likeliest is no proposal.
    private static Proposal? Proposed(PlannedLine line) => line.Proposal is { } proposal ? proposal with { IsSure = true } : null;

    private static PlannedLine? Numbered(StatementPlan plan, string number) =>
        int.TryParse(number.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int wanted) ? plan.Others.FirstOrDefault(line => line.Number == wanted) : null;

    private static Result<StatementPlan> NoLine(StatementPlan plan, string number) =>
        Result.Refused<StatementPlan>(new ArgumentFault.NoSuchBankLine(number, plan.Others.Count()));
}
