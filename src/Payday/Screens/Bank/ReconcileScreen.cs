using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Reconciling;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Entries;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Bank;

/// <summary>The account here held against the bank's balance: the lines that the bank hasn't shown yet are ticked as it shows them. What is entered is stored as it is.</summary>
internal sealed class ReconcileScreen : CursorScreen
{
    private readonly BookSession session;
    private ReconciliationPlan plan;

    /// <summary>Goes on with the one that was begun, at its first line that isn't ticked.</summary>
    public ReconcileScreen(BookSession session)
    {
        this.session = session;
        plan = ReconciliationPlan.Of(session.Book, session.Today);
        Cursor = Math.Max(0, plan.Lines.ToList().FindIndex(line => !plan.IsAtBank(line)));
    }

    /// <inheritdoc/>
    public override string Title => "Account against the bank";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Account line", "what the bank would show as one line: one income, one payment, one whole withdrawal, one deposit."),
        ("At the bank", "the bank shows it. It stays so, and can't be undone before the reconciliation is taken back."),
        ("On its way", "here, but the bank doesn't show it yet: above zero what comes in, below zero what goes out."),
        ("Difference", "the bank's balance less what it should be: the account here without what is on its way."),
    ];

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(plan.Draft.Date);

    /// <inheritdoc/>
    protected override int Count => Plan.Lines.Length;

    /// <inheritdoc/>
    protected override string Empty => "All lines are at the bank. Enter types the bank's balance.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Here is { } line ? [new(Key.Space, "Space", Plan.IsAtBank(line) ? "not yet" : "at the bank", "Whether the bank shows this line; on to the next one.", Tick)] : Array.Empty<Binding>(),
        new(Key.Enter, "Enter", "balance", "Type the bank's balance at the end of that day.", () => new Way.Edit(new CellEdit("The bank's balance", Plan.Draft.Balance?.ToString(session.Style) ?? "", Balance))),
        .. Plan.Lines.IsEmpty ? Array.Empty<Binding>() : [new(Key.A.WithCtrl, "Ctrl+A", Plan.Difference is null ? "all" : "", "The bank shows all lines; Space then takes off what it doesn't. Where all are ticked, none is any more.", All)],
        Letters.Entry.Does(Plan.Difference is { IsZero: false } ? "enter" : "", "Enter what the bank shows and isn't here: the difference is proposed as it stands.", () => new Way.To(new EntryScreen(session, Plan.Difference is { IsZero: false } missing ? missing : null))),
        Letters.Days.Does("day", "The day of the bank's balance.", () => new Way.Edit(new CellEdit("Day of the balance", DateText.Day(Plan.Draft.Date), Day))),
        Letters.Undo.Does(Plan.Lines.IsEmpty ? "take back" : "", "Take back the last reconciliation, after a question.", () => ReconciliationBack.Question(session)),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Plan.Draft.Balance is null ? Array.Empty<Binding>() : [Letters.Confirm.Does("accept", "Write down that what is ticked is at the bank; with a difference after a question.", Accept)],
        ShellKeys.Help(this),
        ShellKeys.Back with { Do = () => IsBegun ? new Way.Done("Kept as it stands, not accepted yet: @ goes on with it.") : Way.Back },
    ];

    /// <inheritdoc/>
    protected override string Detail => Plan.Difference is null
        ? "Tick with Space what the bank shows, and type its balance with Enter."
        : !IsTicked && Plan.Culprits is [Culprit.NoneTicked] ? $"Next, tick with Space each line that the bank shows: the difference of {Plan.Difference.Value.ToString(session.Style)} gets smaller with them."
        : string.Join(' ', Plan.Culprits.Take(2).Select(culprit => CulpritText.Of(culprit, session.Book.Household, HasMore)));

    /// <inheritdoc/>
    protected override string Status => Plan.Difference is { IsZero: true } ? "It agrees; c writes it down."
        : BankAgreement.Of(session.Book) is { } bank ? ReconcileTexts.Whole(bank, session.Style)
        : "";

    // Another screen may have changed the book since, as taking back does; what was entered there is the line to tick next.
    private ReconciliationPlan Plan
    {
        get
        {
            if (!ReferenceEquals(plan.Book, session.Book))
            {
                int before = plan.Lines.Length;
                plan = ReconciliationPlan.Of(session.Book, session.Today);
                if (plan.Lines.Length > before)
                {
                    Cursor = plan.Lines.IndexOf(plan.Lines.MaxBy(line => line.Number)!);
                }
            }

            return plan;
        }
    }

    // Before the first tick a difference is no sign of anything: all that is on its way is in it.
    private bool IsTicked => Plan.Lines.IsEmpty || !Plan.Draft.AtBank.IsEmpty;

    private bool IsBegun => Plan.Draft.Balance is not null || !Plan.Draft.AtBank.IsEmpty;

    private bool HasMore => Plan.Draft.AtBank.Count < Plan.Lines.Length;

    private AccountLine? Here => Plan.Lines.IsEmpty ? null : Plan.Lines[Math.Clamp(Cursor, 0, Plan.Lines.Length - 1)];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width)
    {
        ReconciliationPlan now = Plan;
        TextTableLines lines = new TextTable(
            [Report.Amounts("bank"), Report.Amounts("here"), Report.Amounts("on its way"), Report.Amounts("difference")],
            [[now.Draft.Balance?.ToString(session.Style) ?? "?", now.Here.ToString(session.Style), now.OnItsWay.ToString(session.Style), now.Difference?.ToString(session.Style) ?? "?"]],
            decimalMark: session.Style.DecimalMark).Lay(width - 2);

        // While lines are left to tick a difference is no alarm.
        return lines.Header.Take(1).Concat(lines.Rows).Select(line => FrameLine.Of(" " + line, now.Difference is { IsZero: false } ? HasMore ? Ink.Strong : Ink.Alert : Ink.Plain));
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        DateColumn dates = DateColumn.Of(Plan.Lines.Select(line => line.Date));
        TextTableLines lines = new TextTable(
            [new("date"), Report.Names("line"), Report.Amounts("amount"), new("")],
            [.. Plan.Lines.Select(line => ImmutableArray.Create(
                dates.Text(line.Date), AccountLineText.Of(session.Book.Household, line), line.Amount.ToString(session.Style), Plan.IsAtBank(line) ? "at the bank" : "on its way"))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => Plan.IsAtBank(Plan.Lines[row]) ? (RowSigns.Done, Ink.Plain) : (' ', Ink.Quiet);

    private Way Tick()
    {
        Keep(Plan.Tick(Here!.Number).Value!);
        Cursor = Math.Min(Cursor + 1, Plan.Lines.Length - 1);
        return Way.Stay;
    }

    private Way All()
    {
        Keep(Plan.TickAll());
        return Way.Stay;
    }

    private string? Balance(string text)
    {
        Result<Money> balance = Money.ParseSum(text, session.Book.Household.Currency, session.Style);
        if (!balance.Ok)
        {
            return FaultTexts.Of(balance.Fault, session.Style);
        }

        Keep(Plan.WithBalance(balance.Value));
        return null;
    }

    private string? Day(string text)
    {
        Result<NodaTime.LocalDate> day = TypedDate.Parse(text, session.Today, session.Book.Household.Settings.DateOrder);
        if (!day.Ok)
        {
            return FaultTexts.Of(day.Fault, session.Style);
        }

        if (day.Value > session.Today)
        {
            return DateTexts.StillToCome;
        }

        if (ReconciliationPlan.DayFault(session.Book, day.Value) is { } fault)
        {
            return FaultTexts.Of(fault, session.Style);
        }

        Keep(Plan.With(Plan.Draft with { Date = day.Value }));
        return null;
    }

    private void Keep(ReconciliationPlan next)
    {
        session.Take(next.Kept());
        plan = ReconciliationPlan.Of(session.Book, next.Draft);
    }

    private Way Accept()
    {
        Result<Book> after = Plan.Accept();
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        if (Plan.Difference is not { IsZero: true })
        {
            return new Way.To(new AcceptDifferenceScreen(session, Plan));
        }

        session.Take(after.Value);
        return new Way.Home($"Agreed with the bank on {DateText.Weekday(Plan.Book.Weeks.Reconciliations[^1].Date)}.");
    }
}
