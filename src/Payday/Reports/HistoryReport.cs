using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Histories;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What happened to a pot: what was spent up to each count, as figures and bars, and every fill, purchase and move.</summary>
internal static class HistoryReport
{
    private const int MostBars = 13;
    private const int WidestBar = 40;

    /// <summary>What is spent in a week, and how many were counted.</summary>
    public static string Average(PotHistory history, NumberStyle style) => history.SpentAWeek is { } average
        ? $"{average.ToString(style)} a week on average, {"week".ToQuantity(history.Weeks)} counted"
        : "not counted yet";

    /// <summary>The bars of the last counts and a line for each thing that happened, the newest first.</summary>
    public static IEnumerable<string> Lines(PotHistory history, NumberStyle style, int width) =>
    [
        .. Bars(history, style, width),
        .. history.Lines.IsEmpty ? ["Nothing has happened to it yet."] : Events(history, style, width),
    ];

    /// <summary>What sort of thing happened, in a word or two.</summary>
    public static string Word(PotEvent kind) => kind switch
    {
        PotEvent.Opening => "opening",
        PotEvent.Fill => "fill",
        PotEvent.Wallet => "in the wallet",
        PotEvent.Skipped => "skipped",
        PotEvent.Counted => "counted, spent",
        PotEvent.Card => "by card",
        PotEvent.OwedBack => "to pay back",
        PotEvent.Returned => "brought back",
        PotEvent.Move => "moved",
        PotEvent.Entry => "entered",
        _ => "difference",
    };

    private static IEnumerable<string> Bars(PotHistory history, NumberStyle style, int width)
    {
        ImmutableArray<CountedSpending> spending = [.. history.Spending.TakeLast(MostBars)];
        if (spending.IsEmpty)
        {
            return [];
        }

        long most = Math.Max(1, spending.Max(week => week.Together.MinorUnits));
        int room = Math.Clamp(width - 44, 8, WidestBar);
        return
        [
            .. Table(
                style,
                width,
                [new("Counted"), Report.Amounts("cash"), Report.Amounts("card"), Report.Amounts("spent"), new("")],
                spending.Select(week => ImmutableArray.Create(
                    DateText.Weekday(week.Date),
                    week.Cash.ToString(style),
                    week.Card.ToString(style),
                    week.Together.ToString(style),
                    new string('#', (int)((Int128)Math.Max(0, week.Together.MinorUnits) * room / most))))),
            "",
        ];
    }

    private static IEnumerable<string> Events(PotHistory history, NumberStyle style, int width) => Table(
        style,
        width,
        [new("Date"), new("what"), Report.Amounts("amount"), Report.Amounts("left"), Report.Amounts("has"), new("") { Shrinks = true, MinWidth = 8 }],
        history.Lines.Reverse().Select((line, i) => ImmutableArray.Create(
            $"{DateText.Short(line.Date)} {line.Date.Year}",
            Word(line.Kind),
            line.Amount.ToString(style),
            line.Left is { } left ? left.ToString(style) : "",
            i > 0 && history.Lines[^i].Date == line.Date ? "" : history.On(line.Date)?.ToString(style) ?? "",
            line.What == Word(line.Kind) ? "" : line.What)));

    private static IEnumerable<string> Table(NumberStyle style, int width, ImmutableArray<TextColumn> columns, IEnumerable<ImmutableArray<string>> rows) =>
        new TextTable(columns, [.. rows], decimalMark: style.DecimalMark).Lay(width).All;
}
