using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Statements.Learning;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Learning;

/// <summary>What was found in the bank's files: taken into the household, changed or left, line by line.</summary>
internal sealed class FoundScreen : CursorScreen
{
    private readonly LearningWork work;
    private readonly Onward onward;
    private readonly FoundTexts texts;

    /// <summary>Goes on at the first that is open.</summary>
    /// <param name="work">The files and what they teach.</param>
    /// <param name="onward">Where Right leads.</param>
    public FoundScreen(LearningWork work, Onward onward)
    {
        (this.work, this.onward) = (work, onward);
        texts = new FoundTexts(work);
        Cursor = Math.Max(0, work.Items.ToList().FindIndex(item => work.StateOf(item) == ItemState.Open));
    }

    /// <inheritdoc/>
    public override string Title => "Found in the statements";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Usual", "the amount in the middle of those that came, since the last lasting change."),
        ("To set aside", "what covered the bill eight times out of ten, of the last twelve."),
        ("Hits", "how often it came, of how often it should have."),
        .. SetupWords.All,
    ];

    /// <inheritdoc/>
    protected override string Aside => work.Lessons is { } lessons ? $"{DateText.Day(lessons.Span.Start)} to {DateText.Day(lessons.Span.End)}" : "";

    /// <inheritdoc/>
    protected override int Count => work.Items.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Count == 0 ? Array.Empty<Binding>() : OfItem,
        .. Sure.Length > 1
            ? [Letters.List.Does(string.Create(CultureInfo.InvariantCulture, $"take all {Sure.Length}"), "Take all that are open and ask nothing, as many as the key says, at once; each can be changed or removed again.", TakeAll)]
            : Array.Empty<Binding>(),
        new(Key.CursorLeft, "Left", "files", "Back to the files; what was taken stays.", () => new Way.Instead(new StatementFilesScreen(work, onward))),
        new(Key.CursorRight, "Right", onward.Name, "On with what was taken; it can be changed there too.", onward.Lead),
    ];

    /// <inheritdoc/>
    protected override string Empty => work.Household.TakesParts
        ? "Nothing comes round in these lines that is sure enough to be proposed. More months show more; Left leads back to the files."
        : "No bill, pay or amount in these lines is sure to be missing in your household. Left leads back to the files.";

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width) => Said.Lines(texts.Stopped().Select(text => Said.Quiet(text)), width);

    /// <inheritdoc/>
    protected override string Detail => Count == 0 ? "" : texts.Sentence(Here);

    /// <inheritdoc/>
    protected override string Status
    {
        get
        {
            int taken = work.Items.Count(item => work.StateOf(item) == ItemState.Taken);
            int left = work.Items.Count(item => work.StateOf(item) == ItemState.Left);
            return Count == 0 ? "" : string.Create(
                CultureInfo.InvariantCulture,
                $"{taken} taken, {left} left out, {Count - taken - left} open; only what you take counts.");
        }
    }

    private ProposedItem Here => work.Items[Math.Clamp(Cursor, 0, Count - 1)];

    // What asks something is never taken with others.
    private ProposedItem[] Sure => [.. work.Items.Where(item => work.StateOf(item) == ItemState.Open && item is not ProposedItem.Bill { MayBeDebt: true })];

    private IEnumerable<Binding> OfItem
    {
        get
        {
            ItemState state = work.StateOf(Here);
            bool isTaken = state == ItemState.Taken;
            yield return isTaken
                ? new(Key.Enter, "Enter", "change", "Its fields, as they are in the household.", Open)
                : new(Key.Enter, "Enter", "take", "Take it into the household as it is; Enter once more changes it there.", Take);
            if (state != ItemState.Left)
            {
                yield return isTaken
                    ? Letters.TakeOut.Does("remove", "Remove it from the household again.", Leave)
                    : Letters.TakeOut.Does("leave", "Leave it out.", Leave);
            }

            if (Here is ProposedItem.Bill bill && !isTaken)
            {
                yield return Letters.To.Does("it's a debt", "Enter it as a debt: what is owed and at what rate is for you to type.", () => DebtForm(bill) is { } form ? new Way.To(form) : Way.Stay);
            }
        }
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new(""), Report.Names("Found"), new("when") { Drops = 2, Shrinks = true, MinWidth = 12 }, Report.Amounts("amount"), new("hits", Align.Right) { Drops = 1 }],
            [.. work.Items.Select(texts.Cells)],
            [],
            decimalMark: work.Household.Style.DecimalMark).Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => work.StateOf(work.Items[row]) switch
    {
        ItemState.Taken => (RowSigns.Done, Ink.Done),
        ItemState.Left => ('-', Ink.Quiet),
        _ => (work.Items[row] is ProposedItem.Bill { MayBeDebt: true } ? '?' : ' ', Ink.Plain),
    };

    // A bill or a debt: nothing but the person can say, so neither is taken by a key that takes the others.
    private Way Take() => Here is ProposedItem.Bill { MayBeDebt: true } bill
        ? new Way.To(new PickScreen<bool>(
            $"What is {CleanText.OneLine(bill.Name)}?",
            [new(true, "A debt", "what is owed and its rate come next"), new(false, "A bill", "it is paid, and nothing is owed beyond it")],
            true,
            isDebt => isDebt ? DebtForm(bill) is { } form ? new Way.Instead(form) : Way.Back : TakeHere(Way.Back))
        {
            Asked = texts.Series(bill.Series, "to set aside"),
        })
        : TakeHere(Way.Stay);

    private Way TakeHere(Way then)
    {
        if (work.Take(Here) is { } fault)
        {
            Message = fault;
            return then;
        }

        Message = work.Household.Notice;
        GoOn();
        return then;
    }

    private Way TakeAll()
    {
        ProposedItem[] items = Sure;
        int taken = 0;
        foreach (ProposedItem item in items)
        {
            if (work.Take(item) is { } fault)
            {
                Message = $"{taken} taken; then {CleanText.OneLine(item.Name)}: {fault}";
                return Way.Stay;
            }

            taken++;
        }

        News = $"{taken} taken. Look at each: Enter changes it, x removes it.";
        return Way.Stay;
    }

    private Way Leave()
    {
        bool wasTaken = work.StateOf(Here) == ItemState.Taken;
        if (work.Leave(Here) is { } fault)
        {
            Message = fault;
            return Way.Stay;
        }

        if (!wasTaken)
        {
            GoOn();
        }

        return Way.Stay;
    }

    private FormScreen? DebtForm(ProposedItem.Bill bill)
    {
        if (work.TakeAsDebt(bill) is { } fault)
        {
            Message = fault;
            return null;
        }

        GoOn();
        return NewDebt;
    }

    private FormScreen NewDebt => new FormScreen(work.Household, LearningWork.Debts.NewForm(work.Household), LearningWork.Debts.Noun).AtMissing();

    private Way Open()
    {
        ProposedItem item = Here;
        if (item is ProposedItem.Account)
        {
            Message = "It stands under What is there now; Right leads on to there.";
            return Way.Stay;
        }

        if (work.PlaceOf(item) is var (list, index))
        {
            return new Way.To(new FormScreen(work.Household, list.Form(work.Household, index), list.Noun));
        }

        if (work.IsBegun(item))
        {
            return new Way.To(NewDebt);
        }

        Message = "It was removed from the household; x puts it among the open ones again.";
        return Way.Stay;
    }

    // On to the next that is open, below first.
    private void GoOn()
    {
        int at = Cursor;
        int next = Enumerable.Range(1, Count).Select(step => (at + step) % Count).FirstOrDefault(row => work.StateOf(work.Items[row]) == ItemState.Open, at);
        Cursor = next;
    }
}
