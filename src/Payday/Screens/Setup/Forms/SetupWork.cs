using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Screens.Setup.Fields;
using Payday.Statements.Files;
using Payday.Store.Starts;

namespace Payday.Screens.Setup.Forms;

/// <summary>A household that is worked on: as a draft, which may be incomplete for a while, and is stored as it is made.</summary>
internal abstract class SetupWork : SetupFacts
{
    /// <summary>What else the last change did, in a sentence; empty for nothing.</summary>
    public virtual string Notice => "";

    /// <summary>What is wrong at a place of a household, a sentence, or null.</summary>
    public string? FaultAt(HouseholdDraft next, DraftPlace place) => FaultsOf(next)(place);

    /// <summary>Checks a household once, and says what is wrong at each place of it: a sentence, or null.</summary>
    public abstract Func<DraftPlace, string?> FaultsOf(HouseholdDraft next);

    /// <summary>The items that were taken last from lines, as long as nothing else was; null for none.</summary>
    public TakenLines? LastTaken { get; set; }

    /// <summary>Stores a household in the place of this one.</summary>
    /// <param name="next">The household.</param>
    /// <param name="place">What was changed in it.</param>
    /// <returns>Why it was not stored, a sentence, or null.</returns>
    public abstract string? Put(HouseholdDraft next, DraftPlace place);

    /// <summary>Why an item of a list can't be taken out, or null.</summary>
    public abstract string? WhyKept(DraftMember list, string id);

    /// <summary>The items that were begun and aren't complete yet.</summary>
    public abstract BegunItems Begun { get; }

    /// <summary>Keeps items that aren't complete yet where they outlive this screen.</summary>
    public abstract void KeepBegun(BegunItems begun);

    /// <summary>Forgets what was begun of a list, with the next thing that is stored.</summary>
    public abstract void ForgetBegun(BegunItems begun);

    /// <summary>The bank's files that the household is set up from, and what became of what was found in them.</summary>
    public abstract StartStatements Statements { get; }

    /// <summary>Keeps them where they outlive this screen.</summary>
    public abstract void KeepStatements(StartStatements statements);

    /// <summary>Keeps them with the next thing that is stored: what was taken is marked in the same write.</summary>
    public abstract void MarkStatements(StartStatements statements);

    /// <summary>Keeps what statements teach beside the household with the next thing that is stored; where the household isn't stored yet, once it is begun.</summary>
    /// <param name="learned">Makes it of the household that is stored.</param>
    public virtual void MarkLearned(Func<Household, Func<WeekRecords, WeekRecords>> learned)
    {
    }

    /// <summary>How the bank's CSV files were read before.</summary>
    public virtual ImmutableArray<CsvProfile> Readings => [];
}
