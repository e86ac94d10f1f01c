using Payday.Core.Pots;
using Payday.Core.Routines;

namespace Payday.Texts;

/// <summary>The rule behind a row of the routine, in one sentence: what <c>?</c> says first. Where each is worked out stands in the code of its step.</summary>
internal static class RuleTexts
{
    /// <summary>What came in; see <see cref="IncomeRules"/>.</summary>
    public const string Income = "A source is expected on each of its paydays with its usual pay; what really came is typed over it, and all of it must be placed.";

    /// <summary>What the buffer gives; see <see cref="BufferHelp"/>.</summary>
    public const string Buffer = "Where the payday falls short the buffer gives first, down to what the household says it keeps; more, or without need, only by hand.";

    /// <summary>What pays off an overdraft; see <see cref="OverdraftPayoff"/>.</summary>
    public const string Overdraft = "What comes in is on the account, so it pays off what the account is below zero before anything is placed; less only by hand, as that spends into the overdraft again.";

    /// <summary>A bill that is due; see <see cref="BillRules"/>.</summary>
    public const string Due = "What falls due before the next payday has to be there today: what is set aside for it already counts first, the rest is added today.";

    /// <summary>A bill that is due later; see <see cref="Core.Bills.SetAsidePlanner"/>.</summary>
    public const string Later = "Even is the evenest plan over the next 13 months that is never late, in shares of the pay expected; it may lend what is set aside for one bill to another due sooner.";

    /// <summary>A debt's minimum; see <see cref="DebtRules"/>.</summary>
    public const string Minimum = "Interest of a month is the balance times the yearly rate over twelve, charged on the first due date of the month; the minimum is never more than balance and interest, and pays interest first. Ticked, it has left the account; else it waits there.";

    /// <summary>What is left; see <see cref="SurplusRules"/>.</summary>
    public const string Surplus = "What is left goes to one debt first, by the household's order, and what a debt paid off sets free goes on to the next; any of it can be placed elsewhere.";

    /// <summary>What is missing; see <see cref="UnpayableRules"/>.</summary>
    public const string Unpayable = "What there is goes to the least that each pot needs, then to bills, then to minimums, then to what was put in pots by hand; what that leaves without money is named here.";

    /// <summary>The notes of a pot; see <see cref="WithdrawalRules"/>.</summary>
    public const string Notes = "The least is fetched that pays every pot and week in whole notes it likes, notes at home used first, then with the fewest notes; what no note can make waits in the account, not in notes.";

    /// <summary>The slip; see <see cref="WithdrawalStep"/>.</summary>
    public const string Slip = "The slip asks for the notes of the Withdrawal step, added up over pots and weeks.";

    /// <summary>What goes in a pot; see <see cref="PotRules"/> and <see cref="PotFills"/>.</summary>
    public static string Of(PotKind kind) => kind switch
    {
        PotKind.Spending { Per: FillPer.Week } => "The week's amount times the fill days until the next payday.",
        PotKind.Spending { Per: FillPer.Payday } => "The same amount each payday.",
        PotKind.Spending { Per: FillPer.MonthSpread } => "The month's amount less its fills so far, spread over all paydays that the month still has.",
        PotKind.Spending => "The month's amount less its fills so far, over the usual paydays that the month still has; an extra payday gets only what was missed.",
        PotKind.Sinking => "What is missing of the target, spread evenly over the paydays left before its date, in whole pieces where it is cash, exact by the date.",
        PotKind.Ladder => "One step a payday, rising, falling or even; what was put in so far says which step is next.",
        PotKind.Reserve => "The same amount each payday until it is full, then nothing.",
        _ => throw new ArgumentException("The pot is of an unknown kind.", nameof(kind)),
    };
}
