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
    public sealed record Held(Place Place, Purpose Purpose) : LedgerEnd
    {
        /// <inheritdoc/>
        public override string Key => LedgerKeys.Of(Place, Purpose);
    }

    /// <summary>What is owed on a debt.</summary>
    public sealed record Owed(string DebtId) : LedgerEnd
    {
        /// <inheritdoc/>
        public override string Key => "owed/" + DebtId;
    }

    /// <summary>Somebody outside the household.</summary>
    public sealed record Outside(OutsideKind Kind, string Id) : LedgerEnd
    {
        /// <inheritdoc/>
        public override string Key => LedgerKeys.Of(Kind, Id);
    }

    /// <summary>A purpose in the account.</summary>
    public static LedgerEnd InAccount(Purpose purpose) => new Held(Place.Account, purpose);

    /// <summary>A purpose in cash.</summary>
    public static LedgerEnd InCash(Purpose purpose) => new Held(Place.Cash, purpose);

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
}
