using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Screens.Setup.Forms;
using Payday.Store.Starts;
using Payday.Texts;

namespace Payday.Screens.Setup;

/// <summary>The household of a book while several of its fields are changed at once: nothing is stored before all of them are right.</summary>
/// <param name="book">The book.</param>
/// <param name="today">The date.</param>
internal sealed class StagedWork(Book book, LocalDate today) : SetupWork
{
    private HouseholdDraft draft = HouseholdDraft.Of(book.Household);
    private BegunItems begun = new();

    /// <inheritdoc/>
    public override HouseholdDraft Draft => draft;

    /// <inheritdoc/>
    public override LocalDate Today => today;

    /// <inheritdoc/>
    public override bool TakesParts => false;

    /// <inheritdoc/>
    public override bool HasHistory => !book.Closed.IsEmpty;

    /// <inheritdoc/>
    public override BegunItems Begun => begun;

    /// <inheritdoc/>
    public override StartStatements Statements => StartStatements.None;

    /// <summary>The book with all that was changed; or why it can't be, sentences as <paramref name="said"/> gets them.</summary>
    /// <param name="said">What is said of a refusal.</param>
    public Book? Done(out string said)
    {
        Result<Household> household = HouseholdCheck.Of(draft);
        Result<Book> changed = household.Ok ? HouseholdChange.Of(book, household.Value) : Result.Refused<Book>(household.Faults);
        said = changed.Ok ? ""
            : household.Ok ? FaultTexts.Of(changed.Fault, Style)
            : FormTexts.Named(changed.Fault, draft, Style);
        return changed.Value;
    }

    /// <inheritdoc/>
    public override void KeepBegun(BegunItems begun) => this.begun = begun;

    /// <inheritdoc/>
    public override void ForgetBegun(BegunItems begun) => this.begun = begun;

    /// <inheritdoc/>
    public override void KeepStatements(StartStatements statements) => throw new InvalidOperationException("There are no statements here.");

    /// <inheritdoc/>
    public override void MarkStatements(StartStatements statements) => throw new InvalidOperationException("There are no statements here.");

    /// <inheritdoc/>
    public override Func<DraftPlace, string?> FaultsOf(HouseholdDraft next)
    {
        ImmutableArray<Fault> faults = [.. HouseholdCheck.Of(next).Faults];
        return place => faults.FirstOrDefault(fault => fault is DraftFault found && place.Holds(found.Place)) is { } first ? FormTexts.Of(first, Style) : null;
    }

    /// <inheritdoc/>
    /// <remarks>What is wrong elsewhere may be put right by the next field; it is checked in the end.</remarks>
    public override string? Put(HouseholdDraft next, DraftPlace place)
    {
        if (FaultAt(next, place) is { } fault)
        {
            return fault;
        }

        draft = next;
        return null;
    }

    /// <inheritdoc/>
    public override string? WhyKept(DraftMember list, string id) => BookWork.WhyKept(book, list, id);

    /// <inheritdoc/>
    public override decimal? Owed(DebtDraft debt) => BookWork.Owed(book, debt);
}
