using System.Text.Json.Nodes;
using Humanizer;
using NodaTime;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Shell;
using Payday.Store.Json;
using Payday.Text;

namespace Payday.Screens.Setup;

/// <summary>The household of a book: a change is stored when the whole is right.</summary>
internal sealed class BookWork(BookSession session) : SetupWork
{
    private JsonObject root = HouseholdNodes.Of(session.Book.Household);
    private string notice = "";

    /// <inheritdoc/>
    public override JsonObject Root => root;

    /// <inheritdoc/>
    public override LocalDate Today => session.Today;

    /// <inheritdoc/>
    public override bool TakesParts => false;

    /// <inheritdoc/>
    public override bool HasHistory => !session.Book.Closed.IsEmpty;

    /// <inheritdoc/>
    public override string Notice => notice;

    /// <inheritdoc/>
    protected override JsonObject Begins => session.BegunItems;

    /// <inheritdoc/>
    public override string? FaultAt(JsonObject next, FieldPath place) => HouseholdNodes.Read(next).Faults
        .Where(fault => place.Holds(fault.Place))
        .Select(fault => PlainFault.Sentence(fault.Sentence, Style))
        .FirstOrDefault();

    /// <inheritdoc/>
    public override string? Put(JsonObject next, FieldPath place)
    {
        JsonReading<Household> reading = HouseholdNodes.Read(next);
        if (!reading.Ok)
        {
            return FaultAt(next, place) ?? PlainFault.Of(reading.Faults[0], next, Style);
        }

        bool hadDraft = session.Book.Draft is not null;
        if (session.Change(reading.Value) is { } refusal)
        {
            return PlainFault.Sentence(refusal, Style);
        }

        notice = hadDraft && session.Book.Draft is null ? "The routine begun was for a date that is no payday any more; it was dropped." : "";
        root = HouseholdNodes.Of(session.Book.Household);
        return null;
    }

    /// <inheritdoc/>
    public override string? WhyKept(string list, string id)
    {
        if (!HasHistory)
        {
            return null;
        }

        Movement[] movements = [.. session.Book.Ledger.Movements.Where(movement => Names(movement.From, list, id) || Names(movement.To, list, id))];
        return movements.Length == 0
            ? null
            : $"{"movement".ToQuantity(movements.Length)} of the ledger, the last of {DateText.Long(movements[^1].Date)}, {(movements.Length == 1 ? "names" : "name")} it, so it stays.";
    }

    /// <inheritdoc/>
    public override string Owed(JsonObject debt) => debt["id"]?.ToString() is { } id
        ? session.Book.Ledger.Balances.OwedOn(id).ToPlain()
        : debt["balance"]?.ToString() ?? "";

    private static bool Names(LedgerEnd end, string list, string id) => list switch
    {
        "sources" => end is LedgerEnd.Outside { Kind: OutsideKind.Source } source && source.Id == id,
        "bills" => (end is LedgerEnd.Outside { Kind: OutsideKind.Bill } paid && paid.Id == id)
            || (end is LedgerEnd.Held { Purpose: { Kind: PurposeKind.SetAside } purpose } && purpose.Id == id),
        "debts" => (end is LedgerEnd.Outside { Kind: OutsideKind.Interest } interest && interest.Id == id)
            || (end is LedgerEnd.Owed owed && owed.DebtId == id),
        _ => (end is LedgerEnd.Outside { Kind: OutsideKind.Spending } spent && spent.Id == id)
            || (end is LedgerEnd.Held { Purpose: { Kind: PurposeKind.Pot or PurposeKind.KeptBack or PurposeKind.OwedBack } pot } && pot.Id == id),
    };
}
