using System.Collections.Immutable;

namespace Payday.Store.Edits;

/// <summary>The collections that hold a book.</summary>
internal static class CollectionNames
{
    public const string Households = "household";
    public const string Movements = "movements";
    public const string Closed = "closed";
    public const string Drafts = "drafts";
    public const string Fills = "fills";
    public const string Purchases = "purchases";
    public const string Counts = "counts";
    public const string Settled = "settled";
    public const string Returns = "returns";
    public const string CountDrafts = "countDrafts";
    public const string Payments = "payments";
    public const string Moves = "moves";
    public const string Entries = "entries";
    public const string Reconciliations = "reconciliations";
    public const string Received = "received";
    public const string Takings = "takings";
    public const string StatementRules = "statementRules";
    public const string Readings = "readings";
    public const string Reconciling = "reconciling";
    public const string Forms = "forms";

    /// <summary>All of them; what is in no book, such as the version, is in none.</summary>
    public static readonly ImmutableArray<string> All =
    [
        Households, Movements, Closed, Drafts, Fills, Purchases, Counts, Settled, Returns, CountDrafts,
        Payments, Moves, Entries, Reconciliations, Received, Reconciling, Forms,
        Takings, StatementRules, Readings,
    ];
}
