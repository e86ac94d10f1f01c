using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Statements.Taking;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What lines of the bank's become, in the person's words.</summary>
internal static class TargetText
{
    /// <summary>The word by which fees, interest and the like are named on a command line.</summary>
    public static (string Word, LineTarget Target)[] Words { get; } =
    [
        ("fee", new LineTarget(LineUse.Fee)), ("interest", new LineTarget(LineUse.Interest)), ("gift", new LineTarget(LineUse.Gift)),
        ("transfer", new LineTarget(LineUse.Transfer)), ("income", new LineTarget(LineUse.Income)), ("cash return", new LineTarget(LineUse.Return)), ("leave", LineTarget.Leave),
    ];

    /// <summary>What stands before the name of the pot, or the loose notes, that cash is for.</summary>
    public const string Cash = "cash ";

    /// <summary>What stands before the purpose in the account that gives or gets it.</summary>
    public const string From = " from ";

    /// <summary>The purposes in the account that can give or get what a line becomes.</summary>
    public static ImmutableArray<LedgerEnd> Others(Book book) => [.. MoveEnds.From(book).Where(end => end is LedgerEnd.At { Place: Place.Account })];

    /// <summary>The name of a target, as it is typed and kept in rules, e.g. <c>Rent</c>, <c>fee</c>, <c>cash Food from Reserve</c>.</summary>
    public static string Name(Household household, LineTarget target) => target switch
    {
        { Use: LineUse.For, End: { } end } => PurposeNames.Of(household, end),
        { Use: LineUse.Cash, End: { } end } => Cash + (end == MoveEnds.Loose ? PurposeNames.Of(household, end).ToLowerInvariant() : PurposeNames.Of(household, end)),
        { Use: LineUse.Income, End: LedgerEnd.Outside { SourceId: { } source } } => EndText.Source(household, source),
        _ => Array.Find(Words, pair => pair.Target.Use == target.Use).Word,
    } + (target.Other is { } other ? From + PurposeNames.Of(household, other) : "");

    /// <summary>What a line becomes, e.g. <c>Rent, due 1 Apr</c>, <c>Food, by card</c>, <c>bank fee</c>.</summary>
    /// <param name="household">The household.</param>
    /// <param name="target">What it becomes.</param>
    /// <param name="due">The due that is meant, or null.</param>
    /// <param name="amount">The line's amount, whose sign says what it is.</param>
    public static string Of(Household household, LineTarget target, DueKey? due, Money amount)
    {
        string name = Name(household, target);
        return CleanText.OneLine((target, amount.IsPositive) switch
        {
            ({ Use: LineUse.For, End: LedgerEnd.Owed }, true) => $"borrowed on {name}",
            ({ Use: LineUse.For }, true) => $"refund, {name}",
            ({ Use: LineUse.For, End: LedgerEnd.Owed }, _) when due is null => $"paid on {name}",
            ({ Use: LineUse.Cash, End: { } cash }, var isIn) => Cashed(household, cash, target.Other, isIn),
            ({ Use: LineUse.Return }, _) => "cash return",
            ({ Use: LineUse.Transfer, Other: { } to }, true) => $"transfer, to {PurposeNames.Of(household, to)}",
            ({ Use: LineUse.For, End: LedgerEnd.At { Purpose.Kind: PurposeKind.SetAside } or LedgerEnd.Owed }, _) => due is { } key ? $"{name}, due {DateText.Short(key.Scheduled)}" : name,
            ({ Use: LineUse.For }, _) => $"{name}, by card",
            ({ Use: LineUse.Income, End: null }, _) => "income",
            ({ Use: LineUse.Income }, _) => $"income: {name}",
            ({ Use: LineUse.Fee }, true) => "fee paid back",
            ({ Use: LineUse.Fee }, _) => "bank fee",
            ({ Use: LineUse.Leave }, _) => "left",
            _ => name,
        });
    }

    /// <summary>What a line may be in the book, e.g. <c>line 12: Rent, due 1 Apr</c>.</summary>
    public static string Of(Household household, Partner partner)
    {
        NumberStyle style = household.Settings.Numbers;
        return CleanText.OneLine(partner switch
        {
            Partner.Entered { Line: var line } => $"line {line.Number}: {AccountLineText.Of(household, line)}, {line.Amount.ToString(style)} on {DateText.Short(line.Date)}",
            Partner.Due { Line: var due } => $"{due.Name}, due {DateText.Short(due.Date)}, {due.Rest.ToString(style)}",
            Partner.Pay pay => $"{pay.Name}, payday of {DateText.Short(pay.Payday)}",
            _ => throw new ArgumentOutOfRangeException(nameof(partner), partner, "There is no text for it."),
        });
    }

    private static string Cashed(Household household, LedgerEnd cash, LedgerEnd? other, bool isBrought) =>
        (isBrought ? "cash from " : "cash for ") + EndName(household, cash)
        + (other is null ? "" : (isBrought ? ", to " : ", from ") + EndName(household, other));

    private static string EndName(Household household, LedgerEnd end) =>
        end == MoveEnds.Loose || end == MoveEnds.Buffer ? $"the {PurposeNames.Of(household, end).ToLowerInvariant()}" : PurposeNames.Of(household, end);
}
