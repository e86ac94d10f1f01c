using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Histories;
using Payday.Core.Pots;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Screens.Reviews;

/// <summary>What happened to a pot: what was spent up to each count, as figures and bars, and every fill, purchase and move.</summary>
/// <remarks>The bars are text like the rest: no colour is needed, and a line costs few bytes.</remarks>
internal sealed class HistoryScreen(BookSession session, Pot pot) : PageScreen
{
    private const int MostBars = 13;
    private const int WidestBar = 40;

    private readonly PotHistory history = PotHistory.Of(session.Book, pot.Id);
    private readonly PotPlan? plan = PotPlan.Of(session.Book).FirstOrDefault(plan => plan.Pot.Id == pot.Id);

    /// <inheritdoc/>
    public override string Title => $"History of {pot.Name}";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Has", "what the pot had at the end of that day, in the account and in cash, without cash that it has to pay back."),
        ("Plan", "what it would have if each payday so far had put in what its rule asked for, and nothing else had touched it."),
        ("Opening", "what it had when the household began."),
    ];

    /// <inheritdoc/>
    protected override string Aside => history.SpentAWeek is { } average
        ? $"{average.ToString(session.Style)} a week on average, {"week".ToQuantity(history.Weeks)} counted"
        : "not counted yet";

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) =>
    [
        .. plan is null ? [] : TextWrap.Lines(PotPlanText.Sentence(plan, session.Style), width - 2).Select(line => FrameLine.Of(" " + line, plan.Ahead.IsNegative ? Ink.Alert : Ink.Plain)).Append(FrameLine.Empty),
        .. Bars(width),
        .. history.Lines.IsEmpty ? [FrameLine.Of(" Nothing has happened to it yet.")] : Events(width),
    ];

    private IEnumerable<FrameLine> Bars(int width)
    {
        ImmutableArray<CountedSpending> spending = [.. history.Spending.TakeLast(MostBars)];
        if (spending.IsEmpty)
        {
            return [];
        }

        long most = Math.Max(1, spending.Max(week => week.Together.MinorUnits));
        int room = Math.Clamp(width - 46, 8, WidestBar);
        return
        [
            .. Table(
                width,
                [new("Counted"), Report.Amounts("cash"), Report.Amounts("card"), Report.Amounts("spent"), new("")],
                spending.Select(week => ImmutableArray.Create(
                    DateText.Weekday(week.Date),
                    week.Cash.ToString(session.Style),
                    week.Card.ToString(session.Style),
                    week.Together.ToString(session.Style),
                    new string('#', (int)((Int128)Math.Max(0, week.Together.MinorUnits) * room / most))))),
            FrameLine.Empty,
        ];
    }

    private IEnumerable<FrameLine> Events(int width) => Table(
        width,
        [new("Date"), new("what"), Report.Amounts("amount"), Report.Amounts("left"), Report.Amounts("has"), new("") { Shrinks = true, MinWidth = 8 }],
        history.Lines.Reverse().Select((line, i) => ImmutableArray.Create(
            $"{DateText.Short(line.Date)} {line.Date.Year}",
            Word(line.Kind),
            line.Amount.ToString(session.Style),
            line.Left is { } left ? left.ToString(session.Style) : "",
            i > 0 && history.Lines[^i].Date == line.Date ? "" : history.On(line.Date)?.ToString(session.Style) ?? "",
            line.What == Word(line.Kind) ? "" : line.What)));

    private IEnumerable<FrameLine> Table(int width, ImmutableArray<TextColumn> columns, IEnumerable<ImmutableArray<string>> rows) =>
        new TextTable(columns, [.. rows], decimalMark: session.Style.DecimalMark).Lay(width - 2).All.Select(line => FrameLine.Of(" " + line));

    private static string Word(PotEvent kind) => kind switch
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
}
