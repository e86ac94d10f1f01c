using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Histories;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Texts;

namespace Payday.Reports;

/// <summary>Where the money of a month or year went, and what is held against it.</summary>
/// <param name="Rows">The most first.</param>
/// <param name="Total">All of it.</param>
/// <param name="Last">The same months of the year before; null where there are none, and of a month.</param>
internal sealed record WhereItWent(ImmutableArray<WentRow> Rows, WentRow Total, Flow? Last)
{
    private const string All = "All of it";

    /// <summary>Of a month, against the usual.</summary>
    public static WhereItWent Of(Book book, YearMonth month)
    {
        var months = MonthFlows.Of(book);
        Flow flow = months.At(month).Flow;

        // What is usual and didn't happen says as much as what did.
        return new WhereItWent(
            [
                .. Went(book, flow, months.YearTo(month) + months.YearTo(month.PlusMonths(-12)))
                    .Select(to => Row(to.Name, to.Amount, months.UsualTo(to.End, month)))
                    .Where(row => !row.Amount.IsZero || row.Beside is { IsZero: false }),
            ],
            Row(All, flow.WentOut, months.UsualOf(one => one.WentOut, month)),
            null);
    }

    /// <summary>Of a year up to a month, against the same months of the year before where there are any.</summary>
    public static WhereItWent OfYear(Book book, YearMonth to)
    {
        var months = MonthFlows.Of(book);
        YearMonth before = to.PlusMonths(-12);
        Flow flow = months.YearTo(to);
        Flow? last = before < months.First ? null : months.YearTo(before);
        return new WhereItWent(
            [.. Went(book, flow, last ?? flow).Select(went => new WentRow(went.Name, went.Amount, last?.To(went.End), null))],
            new WentRow(All, flow.WentOut, last?.WentOut, null),
            last);
    }

    private static WentRow Row(string name, Money amount, Usual? usual) => new(name, amount, usual?.Amount, usual?.Months);

    /// <summary>Where the money of a flow went, the most first.</summary>
    public static IEnumerable<(LedgerEnd End, string Name, Money Amount)> Went(Book book, Flow flow) => Went(book, flow, flow);

    // With what something else went to.
    private static IEnumerable<(LedgerEnd End, string Name, Money Amount)> Went(Book book, Flow flow, Flow other) => flow.Where.Keys.Union(other.Where.Keys)
        .Select(end => (End: end, Name: Name(book.Household, end), Amount: flow.To(end)))
        .OrderByDescending(to => to.Amount).ThenBy(to => to.Name, StringComparer.Ordinal);

    private static string Name(Household household, LedgerEnd end) => end switch
    {
        LedgerEnd.Owed owed => EndText.Debt(household, owed.DebtId),
        LedgerEnd.Outside { BillId: { } bill } => EndText.Bill(household, bill),
        LedgerEnd.Outside { PotId: { } pot } => EndText.Pot(household, pot),
        LedgerEnd.Outside { Entry: { } entry } => EntryKindText.Of(entry).Humanize(LetterCasing.Sentence),
        _ => "Buffer",
    };
}
