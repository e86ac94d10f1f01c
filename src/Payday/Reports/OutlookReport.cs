using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Outlooks;
using Payday.Text;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>The coming paydays: what comes in and where it goes, the tight ones marked; with a change on trial beside the plan.</summary>
internal static class OutlookReport
{
    /// <summary>The table, a line a payday.</summary>
    /// <param name="plan">As it is planned.</param>
    /// <param name="trial">With a change, or null.</param>
    /// <param name="style">How numbers are written.</param>
    /// <param name="width">The columns there are.</param>
    public static IEnumerable<string> Lines(Outlook plan, Outlook? trial, NumberStyle style, int width) => Table(plan, trial, style, width).Lay(width).All;

    /// <summary>What the table leaves out where there is so little room; nothing where it is whole.</summary>
    public static IEnumerable<string> LeftOut(Outlook plan, Outlook? trial, NumberStyle style, int width) => Table(plan, trial, style, width).LeftOut(width) is { IsEmpty: false } headers
        ? [$"A wider window shows {headers.InWords()} too."]
        : [];

    /// <summary>What the columns are that don't say it themselves.</summary>
    public const string Legend = "over: left for the surplus; account, cash: what is there at the end.";

    /// <summary>The months of its first payday and its last.</summary>
    public static (YearMonth First, YearMonth Last) Time(Outlook outlook) => (outlook.Paydays[0].Date.ToYearMonth(), outlook.Paydays[^1].Date.ToYearMonth());

    // Two blanks between the columns where nothing has to be left out for them.
    private static TextTable Table(Outlook plan, Outlook? trial, NumberStyle style, int width)
    {
        TextTable wide = Table(plan, trial, style, isWide: true);
        return wide.LeftOut(width).IsEmpty ? wide : Table(plan, trial, style, isWide: false);
    }

    private static TextTable Table(Outlook plan, Outlook? trial, NumberStyle style, bool isWide)
    {
        Outlook shown = trial ?? plan;
        ImmutableArray<TextColumn> columns =
        [
            new(""), new(Date("Payday", isWide), Align.Right), Report.Amounts("in"), Drops("bills", 3), Drops("debts", 2), Drops("pots", 1),
            .. trial is null
                ? [Report.Amounts("over"), Report.Amounts("account"), Drops("cash", 4)]
                : ImmutableArray.Create(Report.Amounts("over"), Report.Amounts("before"), Report.Amounts("account")),
        ];
        return new TextTable(
            columns,
            [.. shown.Paydays.Select((payday, i) => Cells(payday, plan.Paydays.ElementAtOrDefault(i), trial is not null, isWide, style))],
            gap: isWide ? 2 : 1,
            decimalMark: style.DecimalMark);
    }

    // A date and the amount after it would be read as one.
    private static string Date(string text, bool isWide) => isWide ? text : text + " ";

    /// <summary>What is to be said beneath it: the tightest payday, what is reached, paid off, or can't be paid.</summary>
    public static IEnumerable<string> Notes(Outlook outlook, Outlook? plan, NumberStyle style)
    {
        if (outlook.IsCutShort)
        {
            OutlookPayday last = outlook.Paydays[^1];
            yield return $"The payday of {DateText.Long(last.Date)} can't be closed as proposed:";
            foreach (string why in last.Faults.Select(fault => FaultTexts.Of(fault, style)))
            {
                yield return "  " + why;
            }
        }

        if (outlook.Tightest is { } tightest)
        {
            yield return tightest.IsTight
                ? $"Tightest: {DateText.Long(tightest.Date)}, {(-tightest.Spare).ToString(style)} short of what is asked for. ! marks the paydays on which the buffer helps or something is cut."
                : $"Tightest: {DateText.Long(tightest.Date)}, {tightest.Spare.ToString(style)} over.";
        }

        if (plan is { IsCutShort: false } && !outlook.IsCutShort && plan.Paydays is [.., var planned] && outlook.Paydays is [.., var tried])
        {
            Money more = tried.AccountAfter + tried.CashAfter - planned.AccountAfter - planned.CashAfter;
            Money owed = Owed(plan.Book) - Owed(outlook.Book);
            string there = more.IsNegative ? $"{(-more).ToString(style)} less is there" : $"{more.ToString(style)} more is there";
            string debts = owed.IsZero ? "" : owed.IsNegative ? $", and {(-owed).ToString(style)} more is owed" : $", and {owed.ToString(style)} less is owed";
            yield return $"At the end {there}{debts}.";
        }

        if (outlook.Paydays.Any(payday => payday.ToOverdraft.IsPositive || payday.Overdrawn.IsPositive))
        {
            yield return outlook.Paydays.FirstOrDefault(payday => payday.Overdrawn.IsZero) is { } free
                ? $"The overdraft is paid off on {DateText.Long(free.Date)}; what it costs isn't in this."
                : $"{outlook.Paydays[^1].Overdrawn.ToString(style)} of the overdraft is left at the end; what it costs isn't in this.";
        }

        if (!outlook.Reached.IsEmpty)
        {
            yield return $"Reached: {string.Join(", ", outlook.Reached.Select(pot => $"{pot.Name} {DateText.Day(pot.On)}"))}.";
        }

        if (!outlook.PaidOff.IsEmpty)
        {
            yield return $"Paid off: {string.Join(", ", outlook.PaidOff.Select(debt => $"{debt.Name} {DateText.Day(debt.On)}"))}.";
        }
    }

    /// <summary>E.g. <c>Outlook: 26 paydays, all proposals taken</c>.</summary>
    public static string Title(Outlook outlook) => $"Outlook: {"payday".ToQuantity(outlook.Paydays.Length)}, all proposals taken";

    private static Money Owed(Book book) =>
        Money.Sum(book.Household.Debts.Select(debt => book.Ledger.Balances.OwedOn(debt.Id)), book.Household.Currency);

    private static TextColumn Drops(string header, int order) => Report.Amounts(header) with { Drops = order };

    private static ImmutableArray<string> Cells(OutlookPayday payday, OutlookPayday? plan, bool isTrial, bool isWide, NumberStyle style) =>
    [
        payday.IsTight ? "!" : "",
        Date(DateText.Day(payday.Date), isWide),
        (payday.Income + payday.FromBuffer).ToString(style),
        payday.Bills.ToString(style),
        payday.Minimums.ToString(style),
        payday.Pots.ToString(style),
        payday.Surplus.ToString(style),
        .. isTrial
            ? [plan?.AccountAfter.ToString(style) ?? "", payday.AccountAfter.ToString(style)]
            : ImmutableArray.Create(payday.AccountAfter.ToString(style), payday.CashAfter.ToString(style)),
    ];
}
