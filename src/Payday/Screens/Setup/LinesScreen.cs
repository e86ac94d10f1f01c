using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Drafts;
using Payday.Core.ItemLines;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>Items typed or pasted as lines: each is shown as it was read, and one key takes all of them.</summary>
/// <param name="work">The household, which keeps the lines.</param>
/// <param name="list">Which list they are for.</param>
/// <param name="guide">Where Right leads, or null.</param>
internal sealed class LinesScreen(SetupWork work, SetupList list, ISetupGuide? guide = null) : CursorScreen
{
    private const int WidestLine = 40;

    private readonly MonthLine month = new(work);
    private (ImmutableArray<string> Lines, HouseholdDraft Draft, ImmutableArray<LineReading> Readings, HouseholdDraft With)? known;
    private bool asked;

    /// <inheritdoc/>
    public override string Title => $"{list.Title} as lines";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.Lines;

    /// <inheritdoc/>
    protected override string Aside => guide?.Here ?? "";

    /// <inheritdoc/>
    protected override int Count => Lines.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Count == 0
            ? new(Key.Enter, "Enter", "type", $"Type {list.Noun}s as lines, one after the other; a letter begins one too, Enter alone ends. Lines can be pasted.", () => new Way.Edit(Line(null)))
            : new(Key.Enter, "Enter", "change", "Change this line; a letter begins another one. Lines can be pasted.", () => new Way.Edit(Line(At))),
        .. guide is null ? Array.Empty<Binding>() : [new(Key.CursorLeft, "Left", "", $"Back to {guide.BeforeName}; the lines are kept.", guide.Before)],
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(Key.X.WithCtrl, "Ctrl+X", "leave out", "Leave this line out.", LeaveOut)],
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(Key.Delete, "Del", "", "Forget all of these lines, after a question.", () => new Way.To(Forgetting()))],
        .. Count == 0 && Taken is null ? Array.Empty<Binding>() : [new Binding(Key.U.WithCtrl, "Ctrl+U", Count == 0 ? "take back" : "", "Take back what was added last: the last line, then the items taken from lines, which are lines again.", TakeBack)],
        new(Key.N.WithCtrl, "Ctrl+N", Count == 0 ? "form" : "", $"Fill in a form for another {list.Noun} instead.", () => new Way.To(new FormScreen(work, list.NewForm(work), list.Noun))),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Count == 0
            ? guide is null ? Array.Empty<Binding>() : [new(Key.CursorRight, "Right", "go on without", $"On to the next part, {guide.NextName}.", guide.Next)]
            : [new(Key.CursorRight, "Right", guide is null ? "take" : "take, go on", $"Take all that was read{(guide is null ? "" : $" and go on to {guide.NextName}")}; a line that can't be read stays here.", Take)],
        ShellKeys.Help(this),
        ShellKeys.Back with { Help = "Back; the lines are kept until they are taken.", Do = () => guide is null ? Way.Back : new Way.Instead(new ListScreen(work, list, guide)) },
    ];

    /// <inheritdoc/>
    protected override string Empty =>
        $"Type each {list.Noun} as a line and press Enter, like {list.LineExample}; or {list.LineExamples}. A list of such lines can be pasted.";

    /// <inheritdoc/>
    protected override string Detail => Count == 0 ? list.Help
        : Here.Fault is { } fault ? CleanText.OneLine(fault)
        : CleanText.OneLine($"Read as: {list.Written(Here.Item!, work)}");

    /// <inheritdoc/>
    protected override string Status
    {
        get
        {
            int good = Readings.Count(line => line.Fault is null);
            return Count == 0 ? ""
                : good == 0 ? $"{"line".ToQuantity(Count)} to mend."
                : $"{list.Noun.ToQuantity(good)} read{(good < Count ? $", {"line".ToQuantity(Count - good)} to mend" : "")}; Right takes {(good == 1 ? "it" : "them")}.";
        }
    }

    private ImmutableArray<string> Lines => list.Lines(work.Begun);

    private int At => Math.Clamp(Cursor, 0, Count - 1);

    private LineReading Here => Readings[At];

    private TakenLines? Taken => work.LastTaken is { } last && last.List == list.Member ? last : null;

    private ImmutableArray<LineReading> Readings => Known.Readings;

    // Asked for row by row; it is as it was until something is changed.
    private (ImmutableArray<string> Lines, HouseholdDraft Draft, ImmutableArray<LineReading> Readings, HouseholdDraft With) Known
    {
        get
        {
            if (known is not { } last || last.Lines != Lines || !ReferenceEquals(last.Draft, work.Draft))
            {
                ImmutableArray<LineReading> readings = list.Read(work, Lines);
                known = (Lines, work.Draft, readings, readings.Any(line => line.Fault is null) ? list.With(work.Draft, readings) : work.Draft);
            }

            return known.Value;
        }
    }

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        asked = false;
        return Line(null) with { Text = text };
    }

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        asked = false;
        Message = PastedLines.Add(work, text, list.Section);
        Cursor = Math.Max(0, Readings.ToList().FindIndex(line => line.Fault is not null) is >= 0 and int first ? first : Count - 1);
        return true;
    }

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width) => month.Lines(Known.With, width);

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(list.Columns, [.. Readings.Select(Cells)], [], decimalMark: work.Style.DecimalMark).Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Readings[row].Fault is null ? ('+', Ink.Plain) : ('!', Ink.Alert);

    private ImmutableArray<string> Cells(LineReading line) => line.Fault is null
        ? [.. list.Cells(line.Item!, work).Select(CleanText.OneLine)]
        : [.. list.Columns.Select((_, at) => at == list.NameColumn ? TextColumns.Truncate(CleanText.OneLine(line.Line), WidestLine) : "")];

    private CellEdit Line(int? at)
    {
        bool ended = false;
        return new CellEdit(at is null && Count > 0 ? "The next one; Enter alone ends" : $"Like {list.LineExample}", at is { } row ? Lines[row] : "", text =>
        {
            asked = false;
            ended = text.Trim().Length == 0 || at is not null;
            if (text.Trim().Length == 0)
            {
                Cursor = Readings.ToList().FindIndex(line => line.Fault is not null) is >= 0 and int wrong ? wrong : Cursor;
                return null;
            }

            if (at is null && Count == HouseholdLimits.MostItems)
            {
                return PastedLines.Full;
            }

            string line = text.Trim();
            Keep(at is { } changed ? Lines.SetItem(changed, line) : Lines.Add(line));
            Cursor = at ?? Count - 1;
            return null;
        })
        {
            Most = CellEdit.Long,
            GoesOn = at is not null,
            Next = () => ended ? null : Line(null),
        };
    }

    private void Keep(ImmutableArray<string> lines) => work.KeepBegun(list.WithLines(work.Begun, lines));

    private Way Take()
    {
        ImmutableArray<LineReading> readings = Readings;
        LineReading[] good = [.. readings.Where(line => line.Fault is null)];
        if (good.Length > 0 && Store(readings, good) is { } refused)
        {
            Message = refused;
            return Way.Stay;
        }

        if (Count > 0 && !asked)
        {
            asked = true;
            Cursor = 0;
            Message = $"{(good.Length > 0 ? $"{list.Noun.ToQuantity(good.Length)} taken. " : "")}{"line".ToQuantity(Count)} to mend; {(guide is null ? "Esc leaves them here" : "Right again goes on and leaves them here")}.";
            return Way.Stay;
        }

        if (guide is not null)
        {
            return guide.Next();
        }

        Message = good.Length > 0 ? $"{list.Noun.ToQuantity(good.Length)} taken; Ctrl+U takes them back." : Message;
        return Way.Stay;
    }

    // The lines go with the same write that has the items, so that they are never there twice.
    private string? Store(ImmutableArray<LineReading> readings, LineReading[] good)
    {
        BegunItems before = work.Begun;
        HouseholdDraft next = Known.With;
        work.ForgetBegun(list.WithLines(before, [.. readings.Where(line => line.Fault is not null).Select(line => line.Line)]));
        if (work.Put(next, DraftPlace.Of(list.Member)) is { } fault)
        {
            work.ForgetBegun(before);
            return fault;
        }

        work.LastTaken = new TakenLines(list.Member, [.. good.Select(line => line.Line)], [.. good.Select(line => line.Item!.Name!)]);
        return null;
    }

    private Way LeaveOut()
    {
        asked = false;
        Keep(Lines.RemoveAt(At));
        Cursor = Math.Min(Cursor, Math.Max(0, Count - 1));
        return Way.Stay;
    }

    private ForgetScreen Forgetting() => new(
        $"Forget {"line".ToQuantity(Count)}?",
        $"The lines that are shown here are forgotten. What was taken from lines before stays in the list.",
        () => Keep([]));

    private Way TakeBack()
    {
        asked = false;
        if (Count > 0)
        {
            string last = Lines[^1];
            Keep(Lines.RemoveAt(Count - 1));
            Cursor = Math.Max(0, Count - 1);
            Message = $"Taken back: {CleanText.OneLine(last)}";
            return Way.Stay;
        }

        Message = list.TakeBack(work) ?? $"{"line".ToQuantity(Count)} again, as before {(Count == 1 ? "it was" : "they were")} taken.";
        return Way.Stay;
    }
}
