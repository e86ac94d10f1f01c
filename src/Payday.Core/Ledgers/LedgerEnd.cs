using Payday.Core.Ids;

namespace Payday.Core.Ledgers;

/// <summary>One end of a movement: a purpose in a place, a debt, or the outside. One of the nested cases.</summary>
/// <remarks>
/// Each end has a short <see cref="Key"/> that stores and files hold. A debt's balance is negative:
/// it is what the household owes, and a payment moves money into it.
/// </remarks>
public abstract record LedgerEnd
{
    private LedgerEnd()
    {
    }

    /// <summary>The end as stores and files hold it, e.g. <c>account/pot:food</c>.</summary>
    public abstract string Key { get; }

    /// <summary>A purpose in a place.</summary>
    public sealed record At(Place Place, Purpose Purpose) : LedgerEnd
    {
        /// <inheritdoc/>
        public override string Key => LedgerKeys.Of(Place, Purpose);
    }

    /// <summary>What is owed on a debt.</summary>
    public sealed record Owed(DebtId DebtId) : LedgerEnd
    {
        /// <inheritdoc/>
        public override string Key => "owed/" + DebtId.Text;
    }

    /// <summary>Somebody outside the household.</summary>
    public sealed record Outside : LedgerEnd
    {
        internal Outside(OutsideKind kind, string text) => (Kind, Text) = (kind, text);

        /// <summary>Who it is.</summary>
        public OutsideKind Kind { get; }

        /// <inheritdoc/>
        public override string Key => LedgerKeys.Of(Kind, Text);

        /// <summary>The income source that paid, or the name of a one-off; null where it isn't about income.</summary>
        public SourceId? SourceId => Kind == OutsideKind.Source ? new(Text) : null;

        /// <summary>The bill that was paid; null where none was.</summary>
        public BillId? BillId => Kind == OutsideKind.Bill ? new(Text) : null;

        /// <summary>The debt that bears the interest; null where it isn't about interest.</summary>
        public DebtId? DebtId => Kind == OutsideKind.Interest ? new(Text) : null;

        /// <summary>The pot whose money was spent, missed or found; null where it is of no pot, as what is spent from the buffer.</summary>
        public PotId? PotId => Kind is OutsideKind.Spending or OutsideKind.Difference && Text.Length > 0 ? new(Text) : null;

        /// <summary>The sort of account entry by which it came or went; null where it was none.</summary>
        public EntryKind? Entry => Kind == OutsideKind.Entry ? LedgerKeys.EntryKindOf(Text) : null;

        // Of the id; empty where there is none.
        internal string Text { get; }
    }

    /// <summary>What was there before the household began.</summary>
    public static LedgerEnd Opening { get; } = new Outside(OutsideKind.Opening, "");

    /// <summary>A purpose in the account.</summary>
    public static LedgerEnd InAccount(Purpose purpose) => new At(Place.Account, purpose);

    /// <summary>A purpose in cash.</summary>
    public static LedgerEnd InCash(Purpose purpose) => new At(Place.Cash, purpose);

    /// <summary>Whoever pays as an income source.</summary>
    public static LedgerEnd PaidBy(SourceId source) => new Outside(OutsideKind.Source, source.Text);

    /// <summary>Whoever pays once, by no source.</summary>
    /// <param name="name">What the person calls the income.</param>
    public static LedgerEnd OneOff(string name) => new Outside(OutsideKind.Source, name);

    /// <summary>Whoever a bill is paid to.</summary>
    public static LedgerEnd PaidFor(BillId bill) => new Outside(OutsideKind.Bill, bill.Text);

    /// <summary>A lender's interest.</summary>
    public static LedgerEnd InterestOn(DebtId debt) => new Outside(OutsideKind.Interest, debt.Text);

    /// <summary>Wherever money was spent.</summary>
    /// <param name="pot">The pot it was spent from; null for the buffer.</param>
    public static LedgerEnd SpentFrom(PotId? pot) => new Outside(OutsideKind.Spending, pot?.Text ?? "");

    /// <summary>Where what a count misses of a pot went, or what it finds beyond it came from.</summary>
    public static LedgerEnd MissedIn(PotId pot) => new Outside(OutsideKind.Difference, pot.Text);

    /// <summary>Wherever money of an account entry came from or went, where that is nobody of the household's file.</summary>
    public static LedgerEnd Entered(EntryKind kind) => new Outside(OutsideKind.Entry, LedgerKeys.Of(kind));

    /// <summary>Reads a <see cref="Key"/> back.</summary>
    /// <exception cref="FormatException">The text is no such key.</exception>
    public static LedgerEnd FromKey(string key) => LedgerKeys.Read(key);
}

/// <summary>Who is outside.</summary>
public enum OutsideKind
{
    /// <summary>What was there before the household began.</summary>
    Opening,

    /// <summary>An income source; a one-off has its own name as id.</summary>
    Source,

    /// <summary>Whoever a bill is paid to.</summary>
    Bill,

    /// <summary>A lender's interest.</summary>
    Interest,

    /// <summary>Wherever a pot's money was spent.</summary>
    Spending,

    /// <summary>Nobody knows where: what a count missed, or found beyond what was there.</summary>
    Difference,

    /// <summary>Whoever an account entry is with: the bank, a giver, an account elsewhere.</summary>
    Entry,
}
