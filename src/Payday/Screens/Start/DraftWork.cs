using NodaTime;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Screens.Learning;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Starts;
using Payday.Texts;

namespace Payday.Screens.Start;

/// <summary>A household that is being set up: incomplete, and kept on disk all the same with each field.</summary>
internal sealed class DraftWork : SetupWork
{
    private readonly BookStore store;
    private readonly StartFile file;
    private readonly Func<LocalDate> today;
    private StartDraft start;

    /// <summary>Goes on with what was entered before, or begins with what is usual in the machine's region.</summary>
    /// <exception cref="StoreException">What was entered before can't be read.</exception>
    public DraftWork(BookStore store, Func<LocalDate> today, string? locale = null)
    {
        this.store = store;
        this.today = today;
        file = new StartFile(store.Folder);
        start = file.Read() ?? Fresh(today(), locale);
    }

    /// <inheritdoc/>
    public override HouseholdDraft Draft => start.Household;

    /// <inheritdoc/>
    public override LocalDate Today => today();

    /// <inheritdoc/>
    public override bool TakesParts => true;

    /// <inheritdoc/>
    public override bool HasHistory => false;

    /// <inheritdoc/>
    public override BegunItems Begun => start.Begun;

    /// <summary>Whether a part was gone through.</summary>
    public bool HasPassed(string part) => start.Passed.Contains(part);

    /// <summary>Notes that a part was gone through.</summary>
    public void Pass(string part)
    {
        if (!HasPassed(part))
        {
            Write(start with { Passed = start.Passed.Add(part) });
        }
    }

    /// <inheritdoc/>
    public override void KeepBegun(BegunItems begun) => Write(start with { Begun = begun });

    /// <inheritdoc/>
    public override void ForgetBegun(BegunItems begun) => start = start with { Begun = begun };

    /// <inheritdoc/>
    public override StartStatements Statements => start.Statements;

    /// <inheritdoc/>
    public override void KeepStatements(StartStatements statements) => Write(start with { Statements = statements });

    /// <inheritdoc/>
    public override void MarkStatements(StartStatements statements) => start = start with { Statements = statements };

    // What isn't there yet may still come: also a first source, whose like was taken out.
    /// <inheritdoc/>
    public override Func<DraftPlace, string?> FaultsOf(HouseholdDraft next)
    {
        DraftFault[] faults = [.. HouseholdCheck.Of(next).Faults.OfType<DraftFault>().Where(found => found is not (DraftFault.Missing or DraftFault.NoSource))];
        return place => Array.Find(faults, found => place.Holds(found.Place)) is { } first ? FormTexts.Of(first, Style) : null;
    }

    // Items of lists are whole when they get here, so whatever is wrong with one is wrong; of the rest only what was just entered.
    /// <inheritdoc/>
    public override string? Put(HouseholdDraft next, DraftPlace place)
    {
        string? fault = FaultAt(next, place) ?? HouseholdCheck.Of(next).Faults
            .Where(other => other is DraftFault { Place.Steps: [] or [{ Item: not null }, ..] })
            .Select(other => FormTexts.Named(other, next, Style))
            .FirstOrDefault();
        if (fault is not null)
        {
            return fault;
        }

        Write(start with { Household = next });
        return null;
    }

    /// <inheritdoc/>
    public override string? WhyKept(DraftMember list, string id) => null;

    /// <inheritdoc/>
    public override decimal? Owed(DebtDraft debt) => debt.Balance;

    /// <summary>Stores the household and its opening balances.</summary>
    /// <returns>The book to work on; or all that is wrong with the household.</returns>
    public (BookSession? Session, IReadOnlyList<string> Faults) Begin()
    {
        Result<Household> household = HouseholdCheck.Of(Draft);
        if (!household.Ok)
        {
            return (null, [.. household.Faults.Select(fault => FormTexts.Named(fault, Draft, Style))]);
        }

        // Read before anything is stored: files that are gone by now teach nothing, and are in no way.
        Func<WeekRecords, WeekRecords>? learned = Statements.IsEmpty ? null : KeptLessons.Of(new LearningWork(this), household.Value);
        BookSession session = NewBook.Store(store, household.Value, today, learned);
        file.Delete();
        return (session, []);
    }

    // Where the machine says which region it is in, currency, notes and closed days usual there are no question.
    private static StartDraft Fresh(LocalDate day, string? locale)
    {
        StartDraft fresh = StartDraft.Fresh(day);
        return RegionDefaults.OfLocale(locale) is not { } usual ? fresh : fresh with
        {
            Household = UsualOfCurrency.Put(fresh.Household with
            {
                Settings = fresh.Household.Settings with { Currency = usual.Currency, Numbers = usual.Numbers },
            }),
        };
    }

    private void Write(StartDraft next)
    {
        file.Write(next);
        start = next;
    }
}
