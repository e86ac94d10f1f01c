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
    private const string Box = "[ ] ";
    private const string Indent = "    ";

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
        ImmutableArray<NoteLine> lines = NoteCounts.ByValue(data.Lines);
        SlipWords words = SlipWords.Of(data, lines);
        ImmutableArray<string> head = PaperParts.Head(words.Title, data.Date, data.HeadLines, measure);
        if (lines.IsEmpty)
        {
            return new Paper(head, [[words.Nothing]]);
        }

        TextTable table = Table(data, lines, measure);
        ImmutableArray<string> notes = table.NarrowestWidth <= measure ? table.Lay(measure).All : Stacked(data, lines, measure);
        return new Paper(
            head,
            [
                .. words.Before.IsEmpty ? [] : ImmutableArray.Create(Before(words, measure)),
                notes,
                .. words.After.Select(sentence => (ImmutableArray<string>)["", .. TextWrap.Lines(sentence, measure)]),
            ]);
    }

    // What is to be ticked stands together, off what is above and below it.
    private static ImmutableArray<string> Before(SlipWords words, int measure) =>
    [
        .. words.Before.SelectMany((part, i) => (IEnumerable<string>)
        [
            .. i > 0 && !part.IsToTick ? [""] : Array.Empty<string>(),
            .. part.IsToTick
                ? TextWrap.Lines(Box + part.Sentence, measure - Box.Length).Select((line, row) => row == 0 ? line : Indent + line)
                : TextWrap.Lines(part.Sentence, measure),
        ]),
        "",
    ];

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
