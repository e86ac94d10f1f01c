using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Books;

/// <summary>What happened between paydays, each list but that of the fills in the order in which it was entered.</summary>
/// <remarks>
/// The ledger holds the money; these say what its movements were for. A count that is confirmed never changes: what
/// is known later about its difference is a settlement of its own.
/// </remarks>
/// <param name="Fills">Fills of the wallet marked done or skipped, at most one a part.</param>
/// <param name="Purchases">Card purchases, undone ones too; the one at index i has number i + 1.</param>
/// <param name="Counts">Counts of single pots, undone ones too; the one at index i has number i + 1.</param>
/// <param name="Settled">Differences of counts that were cleared up since, at most one a count.</param>
/// <param name="Returns">Owed-back cash that reached the account, or a pot in its stead; undone ones too; numbered likewise.</param>
/// <param name="Draft">A count begun and not confirmed, or null.</param>
public sealed record WeekRecords(
    ImmutableArray<WalletFill> Fills,
    RecordList<CardPurchase, PurchaseTraits> Purchases,
    RecordList<WeekCount, CountTraits> Counts,
    ImmutableArray<SettledDifference> Settled,
    ImmutableArray<CashReturn> Returns,
    CountDraft? Draft)
{
    // Another one with other fills.
    private FillMarks marks = new(Fills);

    /// <summary>Fills of the wallet marked done or skipped, at most one a part.</summary>
    public ImmutableArray<WalletFill> Fills
    {
        get;
        init => (field, marks) = (value, new(value));
    } = Fills;

    /// <summary>Nothing happened yet.</summary>
    public static WeekRecords None { get; } = new([], [], [], [], [], null);

    /// <summary>Dues paid, in part too, or freed; undone ones too; numbered likewise.</summary>
    public ImmutableArray<DuePayment> Payments { get; init; } = [];

    /// <summary>Money moved from purpose to purpose, undone moves too; numbered likewise.</summary>
    public ImmutableArray<Move> Moves { get; init; } = [];

    /// <summary>Account entries, undone ones too; numbered likewise.</summary>
    public ImmutableArray<AccountEntry> Entries { get; init; } = [];

    /// <summary>Reconciliations, undone ones too; numbered likewise.</summary>
    public ImmutableArray<Reconciliation> Reconciliations { get; init; } = [];

    /// <summary>Notes received other than a slip asked for, undone ones too; numbered likewise.</summary>
    public ImmutableArray<NotesReceived> Received { get; init; } = [];

    /// <summary>Statements of the bank's taken, undone ones too; numbered likewise.</summary>
    public ImmutableArray<TakingOfStatements> Takings { get; init; } = [];

    /// <summary>What lines of statements become, as the person keeps it, in the order of their words.</summary>
    public ImmutableArray<StatementRule> StatementRules { get; init; } = [];

    /// <summary>How files of the bank's are read, in the order of their headers.</summary>
    public ImmutableArray<KeptReading> Readings { get; init; } = [];

    /// <summary>The reconciliation begun and not accepted, or null.</summary>
    public ReconciliationDraft? Reconciling { get; init; }

    /// <summary>Forms begun, in the order of their names.</summary>
    public ImmutableArray<FormDraft> Forms { get; init; } = [];

    /// <summary>The payments of dues that stand: what rules look at.</summary>
    public IEnumerable<DuePayment> StandingPayments => Payments.Where(payment => !payment.Undone);

    /// <summary>The moves that stand: what rules look at.</summary>
    public IEnumerable<Move> StandingMoves => Moves.Where(move => !move.Undone);

    /// <summary>The account entries that stand: what rules look at.</summary>
    public IEnumerable<AccountEntry> StandingEntries => Entries.Where(entry => !entry.Undone);

    /// <summary>The reconciliations that stand: what rules look at.</summary>
    public IEnumerable<Reconciliation> StandingReconciliations => Reconciliations.Where(one => !one.Undone);

    /// <summary>The statements taken that stand: what rules look at.</summary>
    public IEnumerable<TakingOfStatements> StandingTakings => Takings.Where(one => !one.Undone);

    /// <summary>The notes received that stand: what rules look at.</summary>
    public IEnumerable<NotesReceived> StandingReceived => Received.Where(one => !one.Undone);

    /// <summary>The notes received for the slip of a payday, where they stand and aren't what it asked for; or null.</summary>
    public NotesReceived? ReceivedOn(LocalDate payday) => Received.IsEmpty ? null : StandingReceived.LastOrDefault(one => one.Payday == payday);

    /// <summary>The card purchases that stand: what rules look at.</summary>
    public IEnumerable<CardPurchase> StandingPurchases => Purchases.With(PurchaseTraits.Stands);

    /// <summary>A card purchase with all its parts, in their order; of one over a single pot that alone.</summary>
    /// <param name="number">The number of any of its parts, one that there is.</param>
    public ImmutableArray<CardPurchase> PartsOf(long number)
    {
        CardPurchase one = Purchases[(int)number - 1];
        return one.Whole is { } whole ? [.. Purchases.From((int)whole - 1).TakeWhile(part => part.Whole == whole)] : [one];
    }

    /// <summary>The counts that stand: what rules look at.</summary>
    public IEnumerable<WeekCount> StandingCounts => Counts.With(CountTraits.Stands);

    /// <summary>The cash returns that stand: what rules look at.</summary>
    public IEnumerable<CashReturn> StandingReturns => Returns.Where(back => !back.Undone);

    /// <summary>Whether nothing that was confirmed stands; a draft alone is nothing.</summary>
    public bool IsEmpty => Fills.IsEmpty && !StandingPurchases.Any() && !StandingCounts.Any() && !StandingReturns.Any()
        && !StandingPayments.Any() && !StandingMoves.Any() && !StandingEntries.Any() && !StandingReconciliations.Any() && !StandingReceived.Any()
        && !StandingTakings.Any();

    /// <summary>The number of the last movement that any of them has; zero where none has one. Of purchases and counts, those entered last have it.</summary>
    public long LastMovement => new[]
    {
        Purchases.Count == 0 ? 0 : Purchases[^1].LastMovement,
        Counts.Count == 0 ? 0 : Counts.From((int)Counts[^1].Together - 1).Max(count => Math.Max(count.LastMovement, count.Move ?? 0)),
        Last(Returns, back => back.LastMovement),
        Last(Settled, settled => settled.Movement),
        Last(Fills, fill => fill.Movement ?? 0),
        Last(Payments, payment => payment.LastMovement),
        Last(Moves, move => move.LastMovement),
        Last(Entries, entry => entry.LastMovement),
        Last(Received, received => received.LastMovement),
        Last(Reconciliations, one => one.AtBank.IsEmpty ? 0 : one.AtBank[^1]),
    }.Max();

    /// <summary>The records without what a payday wrote in them, for when it is reopened: what it used again, and fills of its parts.</summary>
    public WeekRecords Without(ClosedPayday payday)
    {
        ArgumentNullException.ThrowIfNull(payday);
        return this with
        {
            Returns = [.. Returns.Select(back => back.Payday == payday.Payday && !back.Undone ? back with { Undone = true } : back)],
            Fills = Fills.RemoveAll(fill => fill.Key.Payday == payday.Payday),
        };
    }

    /// <summary>The records with only those entries in the draft whose pots a household has in cash.</summary>
    public WeekRecords Fitting(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        HashSet<PotId> pots = [.. household.Pots.Where(pot => pot.Place == Place.Cash).Select(pot => pot.Id)];
        return Draft is null || Draft.Entries.Keys.All(pots.Contains)
            ? this
            : this with { Draft = Draft with { Entries = Draft.Entries.RemoveRange(Draft.Entries.Keys.Where(id => !pots.Contains(id))) } };
    }

    /// <summary>What was typed in a form so far; null where it isn't begun.</summary>
    /// <param name="form">The name of the form.</param>
    public FormDraft? FormOf(string form) => Forms.FirstOrDefault(draft => draft.Form == form);

    /// <summary>What became of the fills of a pot.</summary>
    internal FillMarks.OfPot MarksOf(PotId potId) => marks.Of(potId);

    /// <summary>The records with fills marked, behind those there are; each takes the place of what its part was before.</summary>
    /// <param name="fills">At most one a part.</param>
    internal WeekRecords With(IReadOnlyCollection<WalletFill> fills)
    {
        HashSet<FillKey> known = [.. fills.Select(fill => fill.Key).Where(key => MarksOf(key.PotId)[key.Payday, key.Week] is not null)];
        ImmutableArray<WalletFill> others = known.Count == 0 ? Fills : Fills.RemoveAll(fill => known.Contains(fill.Key));
        return this with { Fills = others.AddRange(fills), marks = marks.With(fills) };
    }

    /// <summary>The records with a form as it stands now; one in which nothing stands is forgotten.</summary>
    public WeekRecords With(FormDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        FormDraft[] kept = draft.Texts.IsEmpty ? [] : [draft];
        return this with
        {
            Forms = [.. Forms.Where(other => other.Form != draft.Form).Concat(kept).OrderBy(one => one.Form, StringComparer.Ordinal)],
        };
    }

    /// <summary>The records with a rule for lines of statements; it takes the place of one of the same words.</summary>
    public WeekRecords With(StatementRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        return this with { StatementRules = [.. StatementRules.Where(other => other.Words != rule.Words).Append(rule).OrderBy(one => one.Words, StringComparer.Ordinal)] };
    }

    /// <summary>The records with a way of reading files; it takes the place of one of the same header.</summary>
    public WeekRecords With(KeptReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return this with { Readings = [.. Readings.Where(other => other.Header != reading.Header).Append(reading).OrderBy(one => one.Header, StringComparer.Ordinal)] };
    }

    /// <summary>The last count of a pot that stands, or null.</summary>
    public WeekCount? LastCountOf(PotId potId) => Counts.LastWith(CountTraits.Stands, potId);

    private static long Last<T>(ImmutableArray<T> records, Func<T, long> movement) => records.IsEmpty ? 0 : records.Max(movement);
}
