using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Screens.Shell;

namespace Payday.Screens.Counts;

/// <summary>A week-end count worked on: each entry is stored as it is made, so a count goes on where it stopped.</summary>
internal sealed class CountWork
{
    /// <summary>Goes on with the count begun, or begins that of the first week that is to be counted.</summary>
    public CountWork(BookSession session)
    {
        Session = session;
        Plan = CountPlan.Of(session.Book, CountWeeks.Begun(session.Book, session.Today));
    }

    /// <summary>The book.</summary>
    public BookSession Session { get; }

    /// <summary>The count as it stands.</summary>
    public CountPlan Plan { get; private set; }

    /// <summary>Keeps what was entered for a pot.</summary>
    /// <returns>Whether it can be confirmed so.</returns>
    public bool Enter(PotId potId, CountEntry entry)
    {
        Keep(Plan.Draft.With(potId, entry));
        return Plan.Rows.Single(row => row.Pot.Id == potId).Fault is null;
    }

    /// <summary>Keeps the pot uncounted.</summary>
    public void Clear(PotId potId) => Keep(Plan.Draft.Without(potId));

    /// <summary>Counts for another day; what was entered was for the day before.</summary>
    public void CountFor(LocalDate date) => Keep(date == Plan.Draft.Date ? Plan.Draft : new CountDraft(date));

    /// <summary>Writes the count to the ledger, and begins that of the next week that is over.</summary>
    /// <returns>Whether there is such a week; or why nothing was written.</returns>
    public Result<bool> Confirm()
    {
        Result<Book> after = Plan.Confirm();
        if (!after.Ok)
        {
            return Result.Refused<bool>(after.Fault);
        }

        LocalDate counted = Plan.Draft.Date;
        Session.Take(after.Value);
        Plan = CountPlan.Of(Session.Book, CountWeeks.Begun(Session.Book, Session.Today, counted));
        return Result.Of(CountWeeks.Open(Session.Book, Session.Today).Any(week => week.LastDay > counted));
    }

    private void Keep(CountDraft draft)
    {
        Session.Take(Session.Book with { Weeks = Session.Book.Weeks with { Draft = draft } });
        Plan = CountPlan.Of(Session.Book, draft);
    }
}
