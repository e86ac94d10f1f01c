using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Sums;
using Payday.Statements.Taking;
using Payday.Text;

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
    public static string Becomes(Household household, PlannedLine line) => line switch
    {
        { State: PlannedState.Matched } => TargetText.Of(household, line.Partners[0]),
        { Choice: { } chosen } => Of(household, line, chosen),
        { Proposal: { IsSure: true } sure } => Of(household, line, sure),
        { State: PlannedState.Waits } => $"waits for {TargetText.Of(household, line.Partners[0])}",
        { State: PlannedState.Unsure } => "taken before?",
        { State: PlannedState.Unclear } => $"{line.Partners.Select(partner => Short(household, partner)).Humanize("or")}?",
        { Proposal: { } guess } => Of(household, line, guess) + "?",
        _ => Looks(line.Looks),
    };

    /// <summary>What a line with several partners may be, a sentence each.</summary>
    public static IEnumerable<string> Candidates(Household household, PlannedLine line) => line.State == PlannedState.Unclear
        ? line.Partners.Select(partner => TargetText.Of(household, partner))
        : [];

    /// <summary>Where a statement may be missing, in a sentence.</summary>
    public static string Gap(StatementStep step, NumberStyle style)
    {
        string count = step.MissingCount is { } number ? "statement".ToQuantity(number) : "A statement";
        string from = step.MissingFrom is { } day ? $" from {DateText.Long(day)} on" : "";
        string worth = step.Missing is { } missing ? $", with {missing.ToString(style)} in all" : "";
        return $"{count} in between may be missing{from}{worth}.";
    }

    private static string Of(Household household, PlannedLine line, Proposal proposal) => proposal.Lines.IsEmpty
        ? TargetText.Of(household, proposal.Target, proposal.Due, line.Line.Amount)
        : $"{(proposal.Lines.Length == 1 ? "line" : "lines")} {proposal.Lines.Select(number => number.ToString(CultureInfo.InvariantCulture)).Humanize()}";

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
