using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.StatementTaking;
using Payday.Statements.Taking;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of statements that can't be taken, and of their lines.</summary>
internal static class TakingTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(TakingFault fault, NumberStyle style) => fault switch
    {
        TakingFault.AllKnown { Left: 0 } => "Nothing in it is new.",
        TakingFault.AllKnown { Left: 1 } => "Nothing in it is new but a line that was left; say what that becomes, or leave it so.",
        TakingFault.AllKnown known => $"Nothing in it is new but {known.Left} lines that were left; say what they become, or leave them so.",
        TakingFault.NoBalance no => $"The file doesn't say the bank's balance on {DateText.Day(no.To)}; give it first.",
        TakingFault.BeforeStart before => $"The statement ends on {DateText.Day(before.To)}, before the household's first day, {DateText.Day(before.Start)}.",
        TakingFault.AtLine at => $"{Line(at.Line, style)}: {FaultTexts.Of(at.Why, style)}",
        TakingFault.NoSuchLine no => $"There is no line {no.Number} of the account that the bank has yet to show; choose another.",
        TakingFault.OtherAmount other => $"That is {other.Here.ToString(style)} here, and {other.Bank.ToString(style)} at the bank; put right what was entered first, or leave the line.",
        TakingFault.NotThat { ComesIn: true } => "That is for money that goes out; choose something else, or leave the line.",
        TakingFault.NotThat => "That is for money that comes in; choose something else, or leave the line.",
        TakingFault.Gone => "What it was for isn't the household's any more; choose something else, or leave the line.",
        TakingFault.NoSuchRule no => $"There is no rule for '{no.Words}'.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence.</summary>
    public static string Of(PlanFault fault, NumberStyle style) => fault switch
    {
        PlanFault.WhichAccount { Accounts: [var only] } => $"There is only {Account(only)} in it.",
        PlanFault.WhichAccount which => $"It is of several accounts: {string.Join(", ", which.Accounts.Select(Account))}.",
        PlanFault.OtherAccount other => $"It is of account {other.Account}, and the statements before were of {other.Known}.",
        PlanFault.OfACard card => $"It is the statement of a card, {Account(card.Account)}: what is owed on a card is a debt of its own.",
        PlanFault.OtherCurrency currency => $"The statement is in {currency.Found}, and the household in {currency.Household}.",
        PlanFault.NoDays => "The file doesn't say of which days it is, and has no lines; there is nothing to take.",
        PlanFault.DoesNotAddUp sum => $"The statement to {DateText.Day(sum.To)} doesn't add up: its lines lead to {sum.Expected.ToString(style)}, and it closes with {sum.Closing.ToString(style)}. Lines may be missing; get the file anew.",
        PlanFault.Breaks broken => $"The statement to {DateText.Day(broken.To)} doesn't add up: before line {broken.Line} of the file {broken.Missing.ToString(style)} is missing. Get the file anew.",
        PlanFault.StillToCome come => $"The statement ends on {DateText.Day(come.To)}, which is still to come.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Account(string number) => number.Length == 0 ? "an account without a number" : $"account {number}";

    /// <summary>A line of the bank's in a sentence, e.g. <c>Corner shop, -12.50 on 3 Apr</c>.</summary>
    public static string Line(TakenLine line, NumberStyle style) =>
        CleanText.OneLine($"{(line.Party.Length > 0 ? line.Party : line.Text.Length > 0 ? line.Text : "A line")}, {line.Amount.ToString(style)} on {DateText.Short(line.Date)}");
}
