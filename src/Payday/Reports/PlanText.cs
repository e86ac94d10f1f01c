using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Status;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Sums;
using Payday.Statements.Taking;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>Statements held against a book, in words.</summary>
internal static class PlanText
{
    /// <summary>What a line of the bank's says: who, and what for where that says more.</summary>
    public static string What(StatementLine line)
    {
        string party = CleanText.OneLine(line.Party);
        string text = CleanText.OneLine(line.Text);
        return party.Length == 0 ? text.Length == 0 ? "(no text)" : text
            : text.Length == 0 || text.StartsWith(party, StringComparison.OrdinalIgnoreCase) ? party
            : $"{party}, {text}";
    }

    /// <summary>What becomes of a line as things stand; with a question mark what might.</summary>
    /// <param name="household">The household.</param>
    /// <param name="line">The line.</param>
    /// <param name="isSureTaken">Whether what is proposed as sure counts without being chosen.</param>
    public static string Becomes(Household household, PlannedLine line, bool isSureTaken = true) => line switch
    {
        { State: PlannedState.Matched } => TargetText.Of(household, line.Partners[0]),
        { Choice: { } chosen } => Of(household, line, chosen),
        { Proposal: { IsSure: true } sure } => Of(household, line, sure) + (isSureTaken ? "" : "?"),
        { State: PlannedState.Waits } => $"waits for {TargetText.Of(household, line.Partners[0])}",
        { State: PlannedState.Unsure } => "taken before?",
        { State: PlannedState.Unclear } => $"{line.Partners.Select(partner => Short(household, partner)).Humanize("or")}?",
        { Proposal: { } guess } => Of(household, line, guess) + "?",
        { Line.Kind: LineKind.Cash } => line.Line.Amount.IsNegative ? "new: cash fetched" : "new: cash brought",
        _ => Looks(line.Looks),
    };

    /// <summary>What a line with several partners may be, a sentence each.</summary>
    public static IEnumerable<string> Candidates(Household household, PlannedLine line) => line.State == PlannedState.Unclear
        ? line.Partners.Select(partner => TargetText.Of(household, partner))
        : [];

    /// <summary>What was read, how much of it the book has, and whether it adds up, in a sentence or two.</summary>
    public static string Summary(StatementPlan plan, NumberStyle style)
    {
        string opens = plan.Statements[0].Opening is { } opening ? $"opens with {opening.Amount.ToString(style)}, " : "";
        string closes = plan.Closing is { } closing ? $"closes with {closing.ToString(style)}" : opens.Length == 0 ? "has no closing balance" : "no closing balance";
        string adds = plan.Statements.All(statement => AddingUp.Of(statement).AddsUp == true) ? "; it adds up" : "";
        string known = plan.Known > 0 ? $", {plan.Known} taken before" : "";
        string early = plan.BeforeStart > 0 ? $", {plan.BeforeStart} from before the start" : "";
        return $"{plan.Matched.Count()} matched, {plan.Others.Count()} new or unclear{known}{early}. It {opens}{closes}{adds}.";
    }

    /// <summary>What the bank's balance says once statements are taken so, with what isn't at the bank yet, so that the figures can be added up.</summary>
    /// <param name="after">The book in which they are taken.</param>
    /// <param name="style">How numbers are written.</param>
    public static string Difference(Book after, NumberStyle style)
    {
        Reconciliation one = after.Weeks.Reconciliations[^1];
        string way = OnTheWay.Of(after) is { } moving ? $", with {ReconcileTexts.Moving(moving, style)} on the way" : "";
        return Difference(one, way, style);
    }

    private static string Difference(Reconciliation one, string way, NumberStyle style) => one.Difference switch
    {
        { IsZero: true } => $"So the account agrees with the bank on {DateText.Short(one.Date)}{way}.",
        { IsNegative: true } less => $"So the bank has {(-less).ToString(style)} less than the account here on {DateText.Short(one.Date)}{way}.",
        var more => $"So the bank has {more.ToString(style)} more than the account here on {DateText.Short(one.Date)}{way}.",
    };

    /// <summary>Why a line becomes what it does, or what it may be, in a sentence; empty where nothing is known.</summary>
    public static string Why(Household household, PlannedLine line) => line switch
    {
        { Choice: { Reason: ProposalReason.Chosen } } => "As you chose.",
        { State: PlannedState.Waits } => $"It looks like {TargetText.Of(household, line.Partners[0])}: close that first, or leave the line and take the file again then.",
        { State: PlannedState.Unsure } => "A line of that day and amount was taken before, with other words: it may be that one. Leave it then.",
        { State: PlannedState.Unclear } => $"It may be {line.Partners.Select(partner => TargetText.Of(household, partner)).Humanize("or")}. Enter picks.",
        { Proposal: { } proposal } => proposal.Reason switch
        {
            ProposalReason.Rule => "By a rule that is kept.",
            ProposalReason.Due => "Amount and day, or amount and words, are those of the due.",
            ProposalReason.Before => "Lines of this party became that before.",
            ProposalReason.Words => "A card purchase had these words.",
            ProposalReason.Bank => "The bank's own word for it.",
            ProposalReason.Cash => "By the bank's words it is cash.",
            ProposalReason.Sum => $"Together they are it: {line.Partners.Select(partner => TargetText.Of(household, partner)).InWords()}.",
            _ => "",
        },
        { Line.Kind: LineKind.Cash, Line.Amount.IsNegative: true } => "Cash fetched that the book doesn't have. Enter picks for which pot.",
        { Line.Kind: LineKind.Cash } => "Cash brought that the book doesn't have. Enter picks where it came from.",
        { Looks: LeftoverKind.Refund } => "It looks like money back. Enter picks what it was for.",
        { Looks: LeftoverKind.StandingPayment } => "It looks like a bill that the household doesn't have. Enter picks what it is for.",
        _ => "The book has nothing for it. Enter picks what it is for, x leaves it.",
    };

    private static string Of(Household household, PlannedLine line, Proposal proposal) => proposal.Lines.IsEmpty
        ? TargetText.Of(household, proposal.Target, proposal.Due, line.Line.Amount)
        : $"{(proposal.Lines.Length == 1 ? "line" : "lines")} {proposal.Lines.Select(number => number.ToString(CultureInfo.InvariantCulture)).InWords()}";

    private static string Short(Household household, Partner partner) => partner switch
    {
        Partner.Entered entered => $"line {entered.Line.Number.ToString(CultureInfo.InvariantCulture)}",
        Partner.Due due => due.Line.Name,
        Partner.Pay pay => pay.Name,
        _ => TargetText.Of(household, partner),
    };

    private static string Looks(LeftoverKind looks) => looks switch
    {
        LeftoverKind.Refund => "new: a refund?",
        LeftoverKind.StandingPayment => "new: a bill?",
        _ => "new",
    };
}
