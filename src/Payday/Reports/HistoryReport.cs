using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Histories;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What happened to a pot: what was spent up to each count, as figures and bars, and every fill, purchase and move.</summary>
internal static class HistoryReport
{
    private const int MostBars = 13;
    private const int WidestBar = 40;

    /// <summary>What the signs of the amounts say.</summary>
    public const string Legend = "+ is into the pot, - out of it; without a sign it has as much as before.";

    /// <summary>What is spent in a week, and how many were counted.</summary>
    public static string Average(PotHistory history, NumberStyle style) => history.SpentAWeek is { } average
        ? $"{average.ToString(style)} a week on average, {"week".ToQuantity(history.Weeks)} counted"
        : "not counted yet";

    /// <summary>The bars of the last counts and a line for each thing that happened, the newest first: a long history is laid out where it is looked at.</summary>
    public static IReadOnlyList<string> Lines(PotHistory history, NumberStyle style, int width)
    {
        ImmutableArray<string> bars = [.. Bars(history, style, width)];
        if (history.Lines.IsEmpty)
        {
            return [.. bars, "Nothing has happened to it yet."];
        }

        LongTable events = Events(history, style, width);
        return new JoinedLines<string>([.. bars, .. TextWrap.Lines(Legend, width), .. events.Header], events);
    }

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

        Money most = spending.Max(week => week.Together);
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
                    Charts.Bars.Of(week.Together, most, room)))),
            "",
        ];
    }

    private static LongTable Events(PotHistory history, NumberStyle style, int width)
    {
        ImmutableArray<PotHistoryLine> lines = history.Lines;
        PotEvent[] kinds = [.. lines.Select(line => line.Kind).Distinct()];
        return new LongTable(
            [new("Date"), new("what"), Report.Amounts("amount"), Report.Amounts("left"), Report.Amounts("has"), new("") { Shrinks = true, MinWidth = 8 }],
            [
                Widest(lines.Select(line => line.Date).Distinct().Select(Day)),
                Widest(kinds.Select(Word)),
                Widest([Widest(lines.Where(line => line.Change is null).Select(line => line.Amount), style), .. Signs(lines.Select(line => line.Change).OfType<Money>(), style)]),
                Widest(lines.Select(line => line.Left).OfType<Money>(), style),
                Widest(history.Balances.Select(balance => balance.Has), style),
                Widest(lines.Select(What)),
            ],
            lines.Length,
            Cells,
            width,
            decimalMark: style.DecimalMark);

        // The newest first; what it had stands with the last thing of a day.
        ImmutableArray<string> Cells(int row)
        {
            PotHistoryLine line = lines[^(row + 1)];
            return
            [
                Day(line.Date),
                Word(line.Kind),
                Amount(line, style),
                line.Left is { } left ? left.ToString(style) : "",
                row > 0 && lines[^row].Date == line.Date ? "" : history.On(line.Date)?.ToString(style) ?? "",
                What(line),
            ];
        }
    }

    private static string Day(LocalDate date) => $"{DateText.Short(date)} {date.Year}";

    private static string What(PotHistoryLine line) => line.What == Word(line.Kind) ? "" : line.What;

    private static string Widest(IEnumerable<string> texts) => texts.MaxBy(TextColumns.Width) ?? "";

    // Of one currency, so the largest or the one that is the furthest below zero.
    private static string Widest(IEnumerable<Money> amounts, NumberStyle style)
    {
        Money[] all = [.. amounts];
        return all.Length == 0 ? "" : Widest([all.Max().ToString(style), all.Min().ToString(style)]);
    }

    private static string[] Signs(IEnumerable<Money> changes, NumberStyle style)
    {
        Money[] all = [.. changes];
        return all.Length == 0 ? [] : [Signed(all.Max(), style), Signed(all.Min(), style)];
    }

    private static string Signed(Money change, NumberStyle style) => change.IsPositive ? "+" + change.ToString(style) : change.ToString(style);

    // With its sign where it changes what the pot has, so that a person can follow that down the page.
    private static string Amount(PotHistoryLine line, NumberStyle style) =>
        line.Change is { } change ? Signed(change, style) : line.Amount.ToString(style);

    private static IEnumerable<string> Table(NumberStyle style, int width, ImmutableArray<TextColumn> columns, IEnumerable<ImmutableArray<string>> rows) =>
        new TextTable(columns, [.. rows], decimalMark: style.DecimalMark).Lay(width).All;
}
