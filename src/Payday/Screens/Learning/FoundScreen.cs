using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Pots;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Statements.Habits;
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

    /// <summary>Goes on at the first that is open.</summary>
    /// <param name="work">The files and what they teach.</param>
    /// <param name="onward">Where Right leads.</param>
    public FoundScreen(LearningWork work, Onward onward)
    {
        (this.work, this.onward) = (work, onward);
        Cursor = Math.Max(0, work.Items.ToList().FindIndex(item => work.StateOf(item) == ItemState.Open));
    }

    /// <inheritdoc/>
    public override string Title => "Found in the statements";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Usual", "the amount in the middle of those that came, since the last lasting change."),
        ("To hold", "what covered the bill eight times out of ten, of the last twelve."),
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
            ? [Letters.List.Does(string.Create(CultureInfo.InvariantCulture, $"take all {Sure.Length}"), "Take all that are open and ask nothing, as many as the key says, at once; each can be changed or taken out again.", TakeAll)]
            : Array.Empty<Binding>(),
        new(Key.CursorLeft, "Left", "files", "Back to the files; what was taken stays.", () => new Way.Instead(new StatementFilesScreen(work, onward))),
        new(Key.CursorRight, "Right", onward.Name, "On with what was taken; it can be changed there too.", onward.Lead),
    ];

    /// <inheritdoc/>
    protected override string Empty => work.Household.TakesParts
        ? "Nothing comes round in these lines that is sure enough to be proposed. More months show more; Left leads back to the files."
        : "No bill, pay or amount in these lines is sure to be missing in your household. Left leads back to the files.";

    /// <inheritdoc/>
    protected override string Detail => Count == 0 ? "" : Sentence(Here);

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
                    ? Letters.TakeOut.Does("take out", "Take it out of the household again.", Leave)
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
            [.. work.Items.Select(Cells)],
            [],
            decimalMark: work.Household.Style.DecimalMark).Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => work.StateOf(work.Items[row]) switch
    {
        ItemState.Taken => ('v', Ink.Done),
        ItemState.Left => ('-', Ink.Quiet),
        _ => (work.Items[row] is ProposedItem.Bill { MayBeDebt: true } ? '?' : ' ', Ink.Plain),
    };

    private ImmutableArray<string> Cells(ProposedItem item) => item switch
    {
        ProposedItem.Source source => ["pay", CleanText.OneLine(work.NameOf(source)), When(source.Series), Amount(source.Item.Expected), LearningReport.Hits(source.Series)],
        ProposedItem.Bill bill => [work.IsDebt(bill) ? "debt" : "bill", CleanText.OneLine(work.NameOf(bill)), When(bill.Series), Amount(bill.Item.Amount), LearningReport.Hits(bill.Series)],
        ProposedItem.Pot pot => ["pot", CleanText.OneLine(work.NameOf(pot)), pot.Item.Per == FillPer.Week ? "a week" : "a month", Amount(pot.Item.Amount), ""],
        ProposedItem.NewAmount amount => ["new", CleanText.OneLine(amount.Name), When(amount.Series), Amount(amount.Found), LearningReport.Hits(amount.Series)],
        ProposedItem.Account account => ["", account.Name, DateText.Day(account.ClosedOn), Amount(account.Amount), ""],
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };

    private string Sentence(ProposedItem item) => item switch
    {
        ProposedItem.Source source => Series(source.Series, "at least"),
        ProposedItem.Bill bill when work.IsDebt(bill) => $"Taken as a debt; {(work.PlaceOf(bill) is null ? "Right leads on to its fields in the household" : "Enter changes it")}. {Series(bill.Series, "the least")}",
        ProposedItem.Bill { MayBeDebt: true } bill when work.StateOf(bill) != ItemState.Taken => $"It reads like a debt: Enter asks whether it is one. {Series(bill.Series, "to hold")}",
        ProposedItem.Bill bill => Series(bill.Series, "to hold"),
        ProposedItem.Pot { Habit: var habit } pot => Spent(habit, pot),
        ProposedItem.NewAmount amount => $"{Amount(amount.Here)} here, {Amount(amount.Found)} at the bank{Since(amount.Series)}. Taken, it holds from {DateText.Long(amount.From)} on. {LearningReport.Hits(amount.Series)} times, up to {DateText.Day(amount.Series.Last)}.",
        ProposedItem.Account account => $"What the bank says was there at the end of {DateText.Long(account.ClosedOn)}. Taken, the household begins with it on {DateText.Long(account.Start)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(item)),
    };

    private static string Since(Recurring series) =>
        series.Changes.FirstOrDefault(change => change.Kind == RecurringChangeKind.Amount) is { } change ? $" since {DateText.Long(change.Since)}" : "";

    private string Series(Recurring series, string hold)
    {
        NumberStyle style = work.Household.Style;
        string varies = series.UsualSize == series.HoldSize ? "" : $", {series.HoldSize.ToString(style)} {hold}";
        string changes = string.Concat(series.Changes.Select(change => " " + LearningTexts.Of(series, change, style)));
        return $"{LearningReport.Hits(series)} times, {DateText.Day(series.First)} to {DateText.Day(series.Last)}; usually {series.UsualSize.ToString(style)}{varies}.{changes}";
    }

    private string Spent(Habit habit, ProposedItem.Pot pot)
    {
        NumberStyle style = work.Household.Style;
        SpendingSummary spent = pot.Item.Per == FillPer.Week ? habit.PerWeek! : habit.PerMonth!;
        string period = pot.Item.Per == FillPer.Week ? "week" : "month";
        return $"{"line".ToQuantity(habit.Lines.Length)}; a {period} took {spent.Median.ToString(style)} in the middle of {spent.Periods}, mostly {spent.Low.ToString(style)} to {spent.High.ToString(style)}. As a cash pot it gets whole notes; Enter twice gives it another name.";
    }

    private static string When(Recurring series) => ScheduleText.Of(series.Rhythm.ToSchedule());

    // The household may have no currency yet.
    private string Amount(decimal? amount)
    {
        Currency currency = work.Lessons!.Currency;
        return amount is { } there ? Money.FromMinorUnits((long)(there * currency.MinorPerUnit), currency).ToString(work.Household.Style) : "";
    }

    // A bill or a debt: nothing but the person can say, so neither is taken by a key that takes the others.
    private Way Take() => Here is ProposedItem.Bill { MayBeDebt: true } bill
        ? new Way.To(new PickScreen<bool>(
            $"What is {CleanText.OneLine(bill.Name)}?",
            [new(true, "A debt", "what is owed and its rate come next"), new(false, "A bill", "it is paid, and nothing is owed beyond it")],
            true,
            isDebt => isDebt ? DebtForm(bill) is { } form ? new Way.Instead(form) : Way.Back : TakeHere(Way.Back))
        {
            Asked = Series(bill.Series, "to hold"),
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

        Message = $"{taken} taken. Look at each: Enter changes it, x takes it out.";
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

        Message = "It was taken out of the household; x puts it among the open ones again.";
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
