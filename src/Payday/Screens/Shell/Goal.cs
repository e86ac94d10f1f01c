using Payday.Core.Books;
using Payday.Core.Undo;

namespace Payday.Screens.Shell;

/// <summary>
/// What a key leads to, by name: a screen says what the person wants to see, and the map of the screens says which screen
/// that is, so that screens need not know each other. One of the nested cases.
/// </summary>
/// <param name="Session">The book it is about.</param>
internal abstract record Goal(BookSession Session)
{
    /// <summary>The first screen of a book that has just been begun or opened; nothing is behind it.</summary>
    /// <param name="Session">The book.</param>
    /// <param name="Message">What it says first.</param>
    public sealed record Home(BookSession Session, string Message) : Goal(Session)
    {
        /// <summary>Whether it says what was done.</summary>
        public bool IsNews { get; init; }
    }

    /// <summary>The routine of the next payday, begun or gone on with.</summary>
    public sealed record Routine(BookSession Session) : Goal(Session);

    /// <summary>The week-end count.</summary>
    public sealed record Count(BookSession Session) : Goal(Session);

    /// <summary>Card purchases.</summary>
    public sealed record Cards(BookSession Session) : Goal(Session);

    /// <summary>Money moved from one purpose to another.</summary>
    public sealed record Moves(BookSession Session) : Goal(Session);

    /// <summary>What came in or went out outside a payday.</summary>
    public sealed record Entries(BookSession Session) : Goal(Session);

    /// <summary>The fills of the wallet.</summary>
    public sealed record Fills(BookSession Session) : Goal(Session);

    /// <summary>Bills and minimums.</summary>
    public sealed record Dues(BookSession Session) : Goal(Session);

    /// <summary>The cash return.</summary>
    public sealed record Return(BookSession Session) : Goal(Session);

    /// <summary>The account held against the bank.</summary>
    public sealed record Bank(BookSession Session) : Goal(Session);

    /// <summary>Statements of the bank's.</summary>
    public sealed record Statements(BookSession Session) : Goal(Session);

    /// <summary>What happened to a pot, which is picked first.</summary>
    public sealed record History(BookSession Session) : Goal(Session);

    /// <summary>The calendar.</summary>
    public sealed record Calendar(BookSession Session) : Goal(Session);

    /// <summary>The paydays to come.</summary>
    public sealed record Outlook(BookSession Session) : Goal(Session);

    /// <summary>How far the debts have come, and the way out of them.</summary>
    public sealed record Debts(BookSession Session) : Goal(Session);

    /// <summary>Months and years.</summary>
    public sealed record Years(BookSession Session) : Goal(Session);

    /// <summary>The ledger.</summary>
    public sealed record Movements(BookSession Session) : Goal(Session);

    /// <summary>The slip and the filling sheet of a payday.</summary>
    /// <param name="Session">The book.</param>
    /// <param name="Payday">The payday, closed or as it would be.</param>
    public sealed record Papers(BookSession Session, ClosedPayday Payday) : Goal(Session);

    /// <summary>The question whether to take something back; where something else has to be before, whether to take that back.</summary>
    /// <param name="Session">The book.</param>
    /// <param name="Entry">What is taken back.</param>
    public sealed record TakingBack(BookSession Session, BookEntry Entry) : Goal(Session);

    /// <summary>The question whether to reopen the last closed payday.</summary>
    public sealed record Reopening(BookSession Session) : Goal(Session);

    /// <summary>Settings, sources, bills, debts and pots.</summary>
    public sealed record Household(BookSession Session) : Goal(Session);
}
