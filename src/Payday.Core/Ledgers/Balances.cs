using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Ledgers;

/// <summary>What every end of the ledger holds: always the sum of its movements.</summary>
public sealed class Balances
{
    private readonly ImmutableDictionary<LedgerEnd, Money> byEnd;
    private readonly Money account;
    private readonly Money cash;

    private Balances(Currency currency, ImmutableDictionary<LedgerEnd, Money> byEnd, Money account, Money cash)
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
        new(currency, ImmutableDictionary<LedgerEnd, Money>.Empty, Money.Zero(currency), Money.Zero(currency));

    /// <summary>The balance of an end; zero where nothing ever moved.</summary>
    public Money this[LedgerEnd end] => byEnd.GetValueOrDefault(end, Money.Zero(Currency));

    /// <summary>All ends whose balance is not zero.</summary>
    public IEnumerable<KeyValuePair<LedgerEnd, Money>> All => byEnd.Where(pair => !pair.Value.IsZero);

    /// <summary>The purposes of a place whose balance is not zero, in the order of their keys.</summary>
    public IEnumerable<(Purpose Purpose, Money Amount)> PurposesIn(Place place) => InOrder(place, _ => true);

    /// <summary>Those of them that are below zero.</summary>
    internal IEnumerable<(Purpose Purpose, Money Amount)> NegativesIn(Place place) => InOrder(place, amount => amount.IsNegative);

    /// <summary>What the purposes of a place add up to.</summary>
    /// <exception cref="OverflowException">It leaves the range of 64 bits.</exception>
    internal Money AddedUpIn(Place place) => Money.Sum(byEnd.Where(pair => pair.Key is LedgerEnd.At end && end.Place == place).Select(pair => pair.Value), Currency);

    /// <summary>
    /// What is in a place. Kept from the movements that cross the place's edge, not added up from the
    /// purposes, so that the two can be held against each other.
    /// </summary>
    public Money In(Place place) => place == Place.Account ? account : cash;

    /// <summary>What is owed on a debt, zero or more unless it was overpaid.</summary>
    public Money OwedOn(DebtId debtId) => -this[new LedgerEnd.Owed(debtId)];

    /// <summary>How far the account is below zero beside what it holds for purposes, zero or more.</summary>
    public Money Overdrawn => -this[LedgerEnd.InAccount(Purpose.Overdraft)];

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

        ImmutableDictionary<LedgerEnd, Money>.Builder changed = byEnd.ToBuilder();
        Money newAccount = account;
        Money newCash = cash;
        foreach ((SameEnd same, Money amount) in moved)
        {
            LedgerEnd end = same.End;
            changed[end] = changed.GetValueOrDefault(end, Money.Zero(Currency)) + amount;
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

        return new Balances(Currency, changed.ToImmutable(), newAccount, newCash);

        void Move(LedgerEnd end, Money amount)
        {
            ref Money sum = ref CollectionsMarshal.GetValueRefOrAddDefault(moved, new SameEnd(end), out bool known);
            sum = known ? sum + amount : amount;
        }
    }

    // Their keys are made for those that are taken alone.
    private IEnumerable<(Purpose Purpose, Money Amount)> InOrder(Place place, Func<Money, bool> takes) => All
        .Where(pair => pair.Key is LedgerEnd.At end && end.Place == place && takes(pair.Value))
        .OrderBy(pair => pair.Key.Key, StringComparer.Ordinal)
        .Select(pair => (((LedgerEnd.At)pair.Key).Purpose, pair.Value));

    // A dictionary calls the methods of a struct as they stand, where it would look up those of a comparer each time.
    private readonly struct SameEnd(LedgerEnd end) : IEquatable<SameEnd>
    {
        public LedgerEnd End => end;

        public bool Equals(SameEnd other) => ReferenceEquals(end, other.End);

        public override bool Equals(object? obj) => obj is SameEnd other && Equals(other);

        public override int GetHashCode() => RuntimeHelpers.GetHashCode(end);
    }
}
