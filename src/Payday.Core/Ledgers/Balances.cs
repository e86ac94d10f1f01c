using System.Runtime.InteropServices;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Ledgers;

/// <summary>What every end of the ledger holds: always the sum of its movements.</summary>
public sealed class Balances
{
    // Never changed once it is here. Few additions are made, each of many movements, and there are many look-ups: a copy for each is less than a tree.
    private readonly Dictionary<LedgerEnd, Money> byEnd;
    private readonly Money account;
    private readonly Money cash;

    private Balances(Currency currency, Dictionary<LedgerEnd, Money> byEnd, Money account, Money cash)
    {
        Currency = currency;
        this.byEnd = byEnd;
        this.account = account;
        this.cash = cash;
    }

    /// <summary>The currency of every balance.</summary>
    public Currency Currency { get; }

    /// <summary>Everything at zero.</summary>
    public static Balances Empty(Currency currency) =>
        new(currency, [], Money.Zero(currency), Money.Zero(currency));

    /// <summary>The balance of an end; zero where nothing ever moved.</summary>
    public Money this[LedgerEnd end] => byEnd.GetValueOrDefault(end, Money.Zero(Currency));

    /// <summary>All ends whose balance is not zero, in the order of their keys.</summary>
    public IEnumerable<KeyValuePair<LedgerEnd, Money>> All => InOrder((_, amount) => !amount.IsZero);

    /// <summary>The purposes of a place whose balance is not zero, in the order of their keys.</summary>
    public IEnumerable<(Purpose Purpose, Money Amount)> PurposesIn(Place place) =>
        InOrder((end, amount) => !amount.IsZero && end is LedgerEnd.At at && at.Place == place).Select(PurposeOf);

    /// <summary>Those of them that are below zero.</summary>
    internal IEnumerable<(Purpose Purpose, Money Amount)> NegativesIn(Place place) =>
        InOrder((end, amount) => amount.IsNegative && end is LedgerEnd.At at && at.Place == place).Select(PurposeOf);

    /// <summary>What the purposes of each place add up to, and all ends.</summary>
    /// <exception cref="OverflowException">A sum leaves the range of 64 bits.</exception>
    internal (Money Account, Money Cash, Money All) AddedUp()
    {
        Money inAccount = Money.Zero(Currency);
        Money inCash = inAccount;
        Money all = inAccount;
        foreach ((LedgerEnd end, Money amount) in byEnd)
        {
            all += amount;
            switch (end)
            {
                case LedgerEnd.At { Place: Place.Account }:
                    inAccount += amount;
                    break;
                case LedgerEnd.At:
                    inCash += amount;
                    break;
            }
        }

        return (inAccount, inCash, all);
    }

    /// <summary>
    /// What is in a place. Kept from the movements that cross the place's edge, not added up from the
    /// purposes, so that the two can be held against each other.
    /// </summary>
    public Money In(Place place) => place == Place.Account ? account : cash;

    /// <summary>What is owed on a debt, zero or more unless it was overpaid.</summary>
    public Money OwedOn(DebtId debtId) => -this[new LedgerEnd.Owed(debtId)];

    /// <summary>How far the account is below zero beside what it holds for purposes, zero or more.</summary>
    public Money Overdrawn => -this[LedgerEnd.InAccount(Purpose.Overdraft)];

    /// <summary>The balances by the movements of columns.</summary>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    internal static Balances Of(MovementColumns columns)
    {
        Balances none = Empty(columns.Currency);
        return none.With(columns.Sums().Select((sum, end) => KeyValuePair.Create(columns.Ends[end], Money.FromMinorUnits(sum, columns.Currency))));
    }

    /// <summary>The balances after further movements.</summary>
    /// <exception cref="OverflowException">A balance leaves the range of 64 bits.</exception>
    public Balances After(params ReadOnlySpan<Movement> movements)
    {
        // By object first: a ledger that is read has few ends, each the same object in all its movements.
        var moved = new Dictionary<SameEnd, Money>();
        foreach (Movement movement in movements)
        {
            Move(movement.From, -movement.Amount);
            Move(movement.To, movement.Amount);
        }

        return With(moved.Select(pair => KeyValuePair.Create(pair.Key.End, pair.Value)));

        void Move(LedgerEnd end, Money amount)
        {
            ref Money sum = ref CollectionsMarshal.GetValueRefOrAddDefault(moved, new SameEnd(end), out bool known);
            sum = known ? sum + amount : amount;
        }
    }

    // By how much ends change; an end may come more than once.
    private Balances With(IEnumerable<KeyValuePair<LedgerEnd, Money>> moved)
    {
        var changed = new Dictionary<LedgerEnd, Money>(byEnd);
        Money newAccount = account;
        Money newCash = cash;
        foreach ((LedgerEnd end, Money amount) in moved)
        {
            ref Money balance = ref CollectionsMarshal.GetValueRefOrAddDefault(changed, end, out bool known);
            balance = known ? balance + amount : amount;
            switch (end)
            {
                case LedgerEnd.At { Place: Place.Account }:
                    newAccount += amount;
                    break;
                case LedgerEnd.At:
                    newCash += amount;
                    break;
            }
        }

        return new Balances(Currency, changed, newAccount, newCash);
    }

    private static (Purpose Purpose, Money Amount) PurposeOf(KeyValuePair<LedgerEnd, Money> held) => (((LedgerEnd.At)held.Key).Purpose, held.Value);

    // Keys are made for those that are taken alone.
    private IEnumerable<KeyValuePair<LedgerEnd, Money>> InOrder(Func<LedgerEnd, Money, bool> takes) =>
        byEnd.Where(pair => takes(pair.Key, pair.Value)).OrderBy(pair => pair.Key.Key, StringComparer.Ordinal);
}
