using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Slips;

/// <summary>Lays out the slip: notes by value, what they come to, and room to tick them off.</summary>
/// <remarks>A teller knows nothing of pots and gives what the slip says; a machine is asked for a sum, and what it gave is held against the slip.</remarks>
internal static class SlipLayout
{
    /// <summary>Columns of a slip where nobody asks for another width.</summary>
    public const int UsualWidth = 42;

    // On wider paper the eye would lose the row between a note and its amount.
    private const int WidestTable = 48;

    /// <summary>The slip on paper.</summary>
    /// <param name="data">What it says.</param>
    /// <param name="width">Columns of the paper, 32 to 80; the slip itself takes no more than 48.</param>
    /// <exception cref="ArgumentOutOfRangeException">No paper is so wide or narrow.</exception>
    /// <exception cref="InvalidOperationException">A note is of another currency.</exception>
    /// <exception cref="OverflowException">The total doesn't fit 64 bits.</exception>
    public static Paper Lay(SlipData data, int width)
    {
        ArgumentNullException.ThrowIfNull(data);
        PaperParts.ThrowIfNoWidth(width);
        int measure = Math.Min(width, WidestTable);
        string title = data.Kind == SlipKind.Deposit ? "Deposit" : "Withdrawal";
        ImmutableArray<string> head = PaperParts.Head(title, data.Date, data.HeadLines, measure);
        ImmutableArray<NoteLine> lines = NoteCounts.ByValue(data.Lines);
        if (lines.IsEmpty)
        {
            return new Paper(head, [[data.Kind == SlipKind.Deposit ? "Nothing to pay in." : "Nothing to withdraw."]]);
        }

        TextTable table = Table(data, lines, measure);
        ImmutableArray<string> notes = table.NarrowestWidth <= measure ? table.Lay(measure).All : Stacked(data, lines, measure);
        return new Paper(head, data switch
        {
            { Kind: SlipKind.Deposit } => [notes],
            { AtAMachine: true } => [Ask(data, lines, measure), notes, .. Small(data, measure), PaperParts.AtTheMachine(measure)],
            _ => [notes, PaperParts.AtTheCounter(measure)],
        });
    }

    private static ImmutableArray<string> Ask(SlipData data, ImmutableArray<NoteLine> lines, int measure) => data.Trips.Length < 2
        ? [.. TextWrap.Lines($"Ask the machine for {NoteCounts.Worth(lines, data.Currency).ToString(data.Style)} {data.Currency.Code}, in these notes where it lets you choose.", measure), ""]
        :
        [
            .. TextWrap.Lines($"The machine gives {data.Limit?.ToString(data.Style)} {data.Currency.Code} at most each time, so go {data.Trips.Length} times, once a day (a rule of our own):", measure),
            .. data.Trips.SelectMany(trip => TextWrap.Lines(
                $"[ ] {DateText.Weekday(trip.Date)}: press {NoteCounts.Worth(trip.Notes, data.Currency).ToString(data.Style)} ({NoteCounts.Words(trip.Notes, data.Style)})", measure - 4)
                .Select((line, i) => i == 0 ? line : "    " + line)),
            "",
            .. TextWrap.Lines("In all, in these notes where it lets you choose:", measure),
        ];

    // A machine has only its own notes; who wanted smaller ones hears it here, where something can be done about it.
    private static ImmutableArray<ImmutableArray<string>> Small(SlipData data, int measure) => data.NoSmallMoney.IsEmpty
        ? []
        : [["", .. TextWrap.Lines(CleanText.OneLine($"It gives too few small notes for {string.Join(", ", data.NoSmallMoney)}; change some in a shop, or ask a teller."), measure)]];

    private static TextTable Table(SlipData data, ImmutableArray<NoteLine> lines, int measure)
    {
        bool roomy = measure >= 40;
        return new TextTable(
            [
                new TextColumn(""),
                new TextColumn("Note", Align.Right) { MinWidth = roomy ? 7 : 6 },
                new TextColumn(""),
                new TextColumn("Count", Align.Right),
                new TextColumn($"Amount {data.Currency.Code}", Align.Right) { Grows = true },
            ],
            [.. lines.Select(line => Row(data.Style, "[ ]", NoteCounts.Name(line.Value, data.Style), "x", line.Count, line.Amount))],
            [Row(data.Style, "", "Total", "", Count(lines), NoteCounts.Worth(lines, data.Currency))],
            roomy ? 2 : 1);
    }

    private static ImmutableArray<string> Row(NumberStyle style, string box, string name, string times, long count, Money amount) =>
        [box, name, times, NoteCounts.Number(count, style), amount.ToString(style)];

    // For sums so large that note, count and amount don't fit one line: the amount stands on a line of its own.
    private static ImmutableArray<string> Stacked(SlipData data, ImmutableArray<NoteLine> lines, int measure)
    {
        string rule = new('-', measure);
        string Right(Money amount) => TextColumns.PadLeft(amount.ToString(data.Style), measure);
        return
        [
            .. lines.SelectMany(line => new[] { $"[ ] {NoteCounts.Words([line], data.Style)}", Right(line.Amount) }),
            rule,
            $"Total {NoteCounts.Number(Count(lines), data.Style)} notes, {data.Currency.Code}",
            Right(NoteCounts.Worth(lines, data.Currency)),
        ];
    }

    private static long Count(ImmutableArray<NoteLine> lines) => lines.Sum(line => line.Count);
}
