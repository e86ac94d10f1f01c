using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Pots;
using Payday.Core.Status;
using Payday.Core.Ids;
using Payday.Core.Undo;
using Payday.Reports;
using Payday.Screens.Bank;
using Payday.Screens.Cards;
using Payday.Screens.Counts;
using Payday.Screens.Dues;
using Payday.Screens.Entries;
using Payday.Screens.Fills;
using Payday.Screens.Home;
using Payday.Screens.Learning;
using Payday.Screens.Watching;
using Payday.Screens.Outlooks;
using Payday.Screens.Moves;
using Payday.Screens.Papers;
using Payday.Screens.Returns;
using Payday.Screens.Reviews;
using Payday.Screens.Routines;
using Payday.Screens.Setup;
using Payday.Screens.Shell;
using Payday.Screens.Statements;
using Payday.Texts;

namespace Payday.Screens.Leading;

/// <summary>Which screen each goal is: the one place that knows them all.</summary>
internal sealed class ScreenMap
{
    // They keep a pasted list until it is taken.
    private readonly Dictionary<BookSession, PurchasesScreen> cards = [];

    /// <summary>Where a goal leads; or what stands in the way, said on the screen that asked.</summary>
    public Way Lead(Goal goal)
    {
        ArgumentNullException.ThrowIfNull(goal);
        BookSession session = goal.Session;
        return goal switch
        {
            Goal.Home { IsNews: true } home => new Way.Afresh(new HomeScreen(session) { News = home.Message }),
            Goal.Home home => new Way.Afresh(new HomeScreen(session) { Message = home.Message }),
            Goal.Routine => Routine(session),
            Goal.Count => new Way.To(new CountScreen(session)),
            Goal.Cards => new Way.To(Cards(session)),
            Goal.Moves => new Way.To(new MovesScreen(session)),
            Goal.Entries => new Way.To(new EntriesScreen(session)),
            Goal.Fills => new Way.To(new FillsScreen(session)),
            Goal.Dues => new Way.To(new DuesScreen(session)),
            Goal.Return => new Way.To(new ReturnScreen(session)),
            Goal.Bank => new Way.To(new ReconcileScreen(session)),
            Goal.Statements => new Way.To(new StatementScreen(session)),
            Goal.History => new Way.To(Histories(session)),
            Goal.Calendar => new Way.To(new CalendarScreen(session)),
            Goal.Outlook => new Way.To(new OutlookScreen(session)),
            Goal.Debts => new Way.To(new DebtsScreen(session)),
            Goal.Years => new Way.To(new YearScreen(session)),
            Goal.Movements => new Way.To(new LedgerScreen(session)),
            Goal.Papers papers => new Way.To(new PapersScreen(session, papers.Payday)),
            Goal.TakingBack back => TakingBack(session, ComesFirst.Of(session.Book, back.Entry, session.Today)),
            Goal.Reopening => new Way.To(new ReopenScreen(session)),
            Goal.Household => new Way.To(Household(new BookWork(session))),
            _ => throw new ArgumentException("No screen is known for it.", nameof(goal)),
        };
    }

    /// <summary>The first screen of a look at a book that another process has open.</summary>
    public static HomeScreen Home(BookWatch looking)
    {
        ArgumentNullException.ThrowIfNull(looking);
        return new HomeScreen(looking.Session) { ReadAgain = looking.ReadAgain };
    }

    private static Way TakingBack(BookSession session, BookEntry entry)
    {
        WeekRecords weeks = session.Book.Weeks;
        return entry switch
        {
            BookEntry.Purchase purchase => new Way.To(new UndoPurchaseScreen(session, weeks.Purchases[(int)purchase.Number - 1])),
            BookEntry.Payment payment => new Way.To(PaymentBack.Question(session, payment.Number)),
            BookEntry.Moved move => new Way.To(MovesScreen.Question(session, weeks.Moves[(int)move.Number - 1])),
            BookEntry.Entered entered => new Way.To(EntriesScreen.Question(session, weeks.Entries[(int)entered.Number - 1])),
            BookEntry.Count count => new Way.To(CountsBack.Question(session, [weeks.StandingCounts.Last(one => one.PotId == count.PotId && one.Date == count.Date)])),
            BookEntry.Difference => new Way.To(new DifferencesScreen(session)),
            BookEntry.Return => ReturnBack.Question(session),
            BookEntry.Reconciliation => ReconciliationBack.Question(session),
            BookEntry.Statement => TakenBack.Question(session),
            BookEntry.Payday => new Way.To(new ReopenScreen(session)),
            BookEntry.Movement movement => new Way.To(new UndoScreen(session, session.Book.Ledger.Movements[(int)movement.Number - 1])),
            _ => new Way.To(new FillsScreen(session)),
        };
    }

    private static SetupScreen Household(BookWork work) => new(work, () => new StatementFilesScreen(work, new Onward("household", () => Way.Back)));

    private static Way Routine(BookSession session)
    {
        Result<RoutineScreen> screen = RoutineScreen.Open(session);
        return screen.Ok ? new Way.To(screen.Value) : new Way.Says(FaultTexts.Of(screen.Fault, session.Style));
    }

    private static PickScreen<Pot> Histories(BookSession session)
    {
        Dictionary<PotId, PotPlan> plans = PotPlan.Of(session.Book).ToDictionary(plan => plan.Pot.Id);
        return new PickScreen<Pot>(
            "History of which pot",
            [.. session.Book.Household.Pots.Select(pot => new PickItem<Pot>(
                pot, pot.Name, plans.TryGetValue(pot.Id, out PotPlan? plan) ? $"{PotsReport.Place(pot)}, {PotPlanText.Of(plan, session.Style)}" : PotsReport.Place(pot)))],
            null,
            pot => new Way.To(new HistoryScreen(session, pot)));
    }

    private PurchasesScreen Cards(BookSession session) =>
        cards.TryGetValue(session, out PurchasesScreen? known) ? known : cards[session] = new PurchasesScreen(session);
}
