using System.Text.Json.Nodes;
using NodaTime;
using Payday.Core.Households;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Shell;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.Json;

namespace Payday.Screens.Start;

/// <summary>A household that is being set up: incomplete, and kept on disk all the same with each field.</summary>
internal sealed class DraftWork : SetupWork
{
    private readonly BookStore store;
    private readonly StartDraft draft;
    private readonly Func<LocalDate> today;
    private readonly HashSet<string> passed;
    private readonly JsonObject begun;
    private JsonObject root;

    /// <summary>Goes on with what was entered before, or begins.</summary>
    /// <exception cref="StoreException">What was entered before can't be read.</exception>
    public DraftWork(BookStore store, Func<LocalDate> today)
    {
        this.store = store;
        this.today = today;
        draft = new StartDraft(store.Folder);
        (root, IReadOnlySet<string> parts, begun) = draft.Read(today());
        passed = [.. parts];
    }

    /// <inheritdoc/>
    public override JsonObject Root => root;

    /// <inheritdoc/>
    public override LocalDate Today => today();

    /// <inheritdoc/>
    public override bool TakesParts => true;

    /// <inheritdoc/>
    public override bool HasHistory => false;

    /// <inheritdoc/>
    protected override JsonObject Begins => begun;

    /// <summary>Whether a part was gone through.</summary>
    public bool HasPassed(string part) => passed.Contains(part);

    /// <summary>Notes that a part was gone through.</summary>
    public void Pass(string part)
    {
        if (passed.Add(part))
        {
            draft.Write(root, passed, begun);
        }
    }

    // Items of lists are whole when they get here, so whatever is wrong with one is wrong; of the rest only what was just entered.
    /// <inheritdoc/>
    public override string? FaultAt(JsonObject next, FieldPath place)
    {
        JsonFault[] faults = [.. HouseholdNodes.Read(next).Faults];
        return faults.Where(fault => place.Steps.Length > 0 && place.Holds(fault.Place)).Select(fault => PlainFault.Sentence(fault.Sentence, Style)).FirstOrDefault();
    }

    /// <inheritdoc/>
    public override string? Put(JsonObject next, FieldPath place)
    {
        string? fault = place.In(next) is null ? null : FaultAt(next, place);
        fault ??= HouseholdNodes.Read(next).Faults
            .Where(other => other.Place.Length == 0 || other.Place.Contains('[', StringComparison.Ordinal))
            .Select(other => PlainFault.Of(other, next, Style))
            .FirstOrDefault();
        if (fault is not null)
        {
            return fault;
        }

        draft.Write(next, passed, begun);
        root = next;
        return null;
    }

    /// <inheritdoc/>
    protected override void StoreBegun() => draft.Write(root, passed, begun);

    /// <inheritdoc/>
    public override string? WhyKept(string list, string id) => null;

    /// <inheritdoc/>
    public override string Owed(JsonObject debt) => debt["balance"]?.ToString() ?? "";

    /// <summary>Stores the household and its opening balances.</summary>
    /// <returns>The book to work on; or all that is wrong with the household.</returns>
    public (BookSession? Session, IReadOnlyList<string> Faults) Begin()
    {
        JsonReading<Household> reading = HouseholdNodes.Read(root);
        if (!reading.Ok)
        {
            return (null, [.. reading.Faults.Select(fault => PlainFault.Of(fault, root, Style))]);
        }

        BookSession session = NewBook.Store(store, reading.Value, today);
        draft.Delete();
        return (session, []);
    }
}
