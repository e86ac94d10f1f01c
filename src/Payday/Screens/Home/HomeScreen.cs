using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Home;

/// <summary>What is next, whether the money agrees, and what needs doing - in that order.</summary>
internal sealed class HomeScreen(BookSession session) : PageScreen
{
    private readonly HomeOutlook outlook = new();

    /// <summary>Makes the key that reads the book anew, where it is only looked at.</summary>
    public Func<Screen, Binding>? ReadAgain { get; init; }

    /// <summary>Where leaving leads; null leaves the program.</summary>
    public Func<Screen>? Leave { get; init; }

    /// <inheritdoc/>
    public override LeaveScreen Leaving => session switch
    {
        { IsReadOnly: true } => LeaveScreen.ReadOnly(),
        { IsThrownAway: true } => LeaveScreen.ThrownAway(),
        _ => new LeaveScreen(),
    };

    /// <inheritdoc/>
    public override ScreenLook Look => session.Book.Household.Settings.Look;

    /// <inheritdoc/>
    public override string Title => session.Book.Household.Name;

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Set aside", "money in the account that is for a bill or a debt until that is paid." + Now(PurposeKind.SetAside)),
        ("Buffer", "account money deliberately left without another purpose."),
        ("To pay back", "cash that goes from a pot to the account after a card purchase; below zero in the account, because the account has paid already." + Now(PurposeKind.OwedBack)),
        ("Overdraft", "what the account is below zero beside what is set aside in it; what comes in pays it off first, and the bank's terms decide what it costs."),
        ("Not in notes", "the part of a fill that no note can make; it waits in the account and joins the pot's next fill." + Now(PurposeKind.KeptBack)),
    ];

    // The household's own figure, the largest with its name.
    private string Now(PurposeKind kind)
    {
        (Purpose Purpose, Money Amount)[] all = [.. session.Book.Ledger.Balances.PurposesIn(kind == PurposeKind.OwedBack ? Place.Cash : Place.Account).Where(one => one.Purpose.Kind == kind && one.Amount.IsPositive)];
        if (all.Length == 0)
        {
            return "";
        }

        (Purpose purpose, Money amount) = all.MaxBy(one => one.Amount.MinorUnits);
        return $" Now {Money.Sum(all.Select(one => one.Amount), amount.Currency).ToString(session.Style)}{(all.Length == 1 ? "" : $", the most of it {amount.ToString(session.Style)}")}: {EndText.Of(session.Book.Household, purpose)}.";
    }

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(session.Today);

    /// <inheritdoc/>
    protected override bool HasRule => false;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. ReadAgain is { } again ? [again(this)] : Array.Empty<Binding>(),
        Changing(new(Key.Enter, "Enter", "payday", "The routine of the next payday; one that was begun goes on where it was left.", () => new Way.Visit(new Goal.Routine(session)))),
        Changing(Letters.Week.Does("count", "The week-end count: what is left of the cash pots.", () => new Way.Visit(new Goal.Count(session)))),
        Letters.Card.Does("card", session.IsReadOnly ? "Card purchases." : "Card purchases: enter, change, undo.", () => new Way.Visit(new Goal.Cards(session))),
        Letters.To.Does("", session.IsReadOnly ? "Moves." : "Move money from one purpose to another; the moves so far.", () => new Way.Visit(new Goal.Moves(session))),
        Letters.Entry.Does("", session.IsReadOnly ? "What came in or went out outside a payday." : "Enter what came in or went out outside a payday: a fee, interest, a gift, a cheque, cash lost.", () => new Way.Visit(new Goal.Entries(session))),
        Changing(Letters.Fill.Does("", "Fill the wallet for the week.", () => new Way.Visit(new Goal.Fills(session)))),
        Changing(Letters.Return.Does("", "Take the cash that pots have to pay back to the bank.", () => new Way.Visit(new Goal.Return(session)))),
        Letters.Dues.Does("bills", "Bills and minimums: tick what has left the account.", () => new Way.Visit(new Goal.Dues(session))),
        Changing(Letters.Bank.Does("", "Compare the account with the bank's balance, line by line.", () => new Way.Visit(new Goal.Bank(session)))),
        Changing(Letters.Statement.Does("", "Read the bank's statements, take what is new in them, and reconcile by them.", () => new Way.Visit(new Goal.Statements(session)))),
        Letters.One.Does(Looks("history"), "What happened to a pot: fills, spending, card purchases, moves.", () => new Way.Visit(new Goal.History(session))),
        Letters.Days.Does(Looks("calendar"), "Paydays, fill days and dues of the next months.", () => new Way.Visit(new Goal.Calendar(session))),
        Letters.Outlook.Does(Looks("ahead"), "The outlook: the paydays to come, and what a change would do.", () => new Way.Visit(new Goal.Outlook(session))),
        Letters.Debts.Does("", "Debts: how far each has come, and the way out of them.", () => new Way.Visit(new Goal.Debts(session))),
        Letters.Years.Does("", "Months and years: income, outgoings, savings and debts.", () => new Way.Visit(new Goal.Years(session))),
        Letters.Ledger.Does(Looks("ledger"), "The ledger: every line of it, what went where and why.", () => new Way.Visit(new Goal.Movements(session))),
        Letters.View.Does("", "The slip and the filling sheet of the last closed payday.", ToSlip),
        Changing(Letters.Household.Does("household", "Settings, income sources, bills, debts and pots.", () => new Way.Visit(new Goal.Household(session)))),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        ShellKeys.Help(this),
        Leave is { } back
            ? new(Key.Esc, "Esc", "leave", "Leave the demo household, after a question; what was tried in it is thrown away.", () => new Way.To(LeaveScreen.Demo(back)))
            : new(Key.Esc, "Esc", "leave", "Leave Payday, after a question that says what is kept.", () => new Way.To(Leaving)),
    ];

    /// <inheritdoc/>
    protected override object Source => (session.Book, session.Today, session.IsReadOnly, Room);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        Book book = session.Book;

        // Where the pots stand one below the other they would push what falls due out of view.
        IEnumerable<FrameLine> pots = HomePots.Lines(book, session.Today, width);
        IEnumerable<FrameLine> dues = HomeDues.Lines(book, session.Today, width);
        FrameLine[] lines =
        [
            .. InOrder(Next(width), Needs(width)),
            .. HomeMoney.Lines(book, BankAgreement.Of(book), OnTheWay.Of(book), width),
            .. width < Grid.Wide ? dues.Concat(pots) : pots.Concat(dues),
            .. HomePots.Debts(book, width),
        ];
        return [.. lines, .. outlook.Lines(book, width, Room - lines.Length)];
    }

    // The most urgent first: a payday that is still to come waits for nobody.
    private FrameLine[] InOrder(IEnumerable<FrameLine> next, IEnumerable<FrameLine> needs) =>
        Core.Routines.Routine.Next(session.Book) is { Ok: true, Value: var date } && date > session.Today ? [.. needs, .. next] : [.. next, .. needs];

    private IEnumerable<FrameLine> Next(int width) => NextLines(width - 2).Select(line => FrameLine.Of(" " + line, Ink.Strong));

    // What Enter does has a line of its own where it doesn't fit beside the date.
    private IEnumerable<string> NextLines(int width)
    {
        Result<LocalDate> next = Core.Routines.Routine.Next(session.Book);
        if (!next.Ok)
        {
            return TextWrap.Lines(FaultTexts.Of(next.Fault, session.Style), width);
        }

        int days = Period.DaysBetween(session.Today, next.Value);
        string when = days switch { 0 => "today", 1 => "tomorrow", > 1 => $"in {"day".ToQuantity(days)}", _ => $"{"day".ToQuantity(-days)} ago, not closed yet" };
        string todo = (session.Book.Draft, session.IsReadOnly) switch
        {
            ({ } draft, false) => $"Enter goes on at step {(int)draft.Step} of 7.",
            ({ } draft, true) => $"Its routine is begun, at step {(int)draft.Step} of 7.",
            (null, false) => "Enter begins its routine.",
            _ => "",
        };
        string date = $"Next payday: {DateText.Weekday(next.Value)}, {when}.";
        string together = $"{date} {todo}".TrimEnd();
        return TextColumns.Width(together) <= width ? [together] : [.. TextWrap.Lines(date, width), .. TextWrap.Lines(todo, width)];
    }

    private Binding Changing(Binding binding) => session.Changing(this, binding);

    // Where nothing can be changed, the bottom line has room for what there is to look at.
    private string Looks(string label) => session.IsReadOnly ? label : "";

    private IEnumerable<FrameLine> Needs(int width)
    {
        NeedWays ways = session.IsReadOnly ? NeedWays.None : NeedWays.Keys;
        foreach (string need in OverviewNeeds.Of(session.Book).Concat(WeekNeeds.Of(session.Book, session.Today, ways)).SelectMany(need => TextWrap.Lines("! " + need, width - 2)))
        {
            yield return FrameLine.Of(" " + need, Ink.Alert);
        }

        foreach (string found in WeekNeeds.Found(session.Book, ways).SelectMany(found => TextWrap.Lines("+ " + found, width - 2)))
        {
            yield return FrameLine.Of(" " + found);
        }
    }

    private Way ToSlip()
    {
        if (session.Book.LastClosed is { } closed)
        {
            return new Way.Visit(new Goal.Papers(session, closed));
        }

        Message = "No payday has been closed yet; its slip comes with the routine.";
        return Way.Stay;
    }
}
