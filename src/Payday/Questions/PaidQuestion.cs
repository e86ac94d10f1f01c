using Payday.Core.Amounts;
using Payday.Screens.Routines;

namespace Payday.Questions;

/// <summary>A question for a bill or a minimum of a payday: its amount, and whether it has left the account.</summary>
internal static class PaidQuestion
{
    private const string Paid = "paid";
    private const string Unpaid = "unpaid";

    /// <summary>The question.</summary>
    /// <param name="id">What it is found by.</param>
    /// <param name="text">The question.</param>
    /// <param name="row">The row of the step: its cell takes the amount, its tick turns whether it is paid.</param>
    /// <param name="isPaid">Whether it is paid now.</param>
    /// <param name="style">How the household writes numbers.</param>
    /// <param name="now">What is said once it was changed.</param>
    public static Question Of(string id, string text, StepRow row, bool isPaid, NumberStyle style, Func<string> now) => new(id, text, answer =>
    {
        (string amount, bool? paid) = Split(answer);
        if (amount.Length > 0 && row.Edit!.Accept(amount) is { } fault)
        {
            return new Taken.Refused(fault);
        }

        if (paid is { } said && said != isPaid)
        {
            row.Tick!();
        }

        return answer.Length == 0 ? Taken.On : new Taken.Next(now());
    })
    {
        Help =
        [
            $"Type paid where it has left the account, unpaid where it hasn't, or another amount; both go together, like {style.Written("48.20")} paid.",
            "What is to pay stays set aside until it is paid; the next payday takes it up again.",
            row.Rule,
        ],
    };

    private static (string Amount, bool? Paid) Split(string answer) =>
        answer.EndsWith(Unpaid, StringComparison.OrdinalIgnoreCase) ? (answer[..^Unpaid.Length].Trim(), false)
        : answer.EndsWith(Paid, StringComparison.OrdinalIgnoreCase) ? (answer[..^Paid.Length].Trim(), true)
        : (answer, null);
}
