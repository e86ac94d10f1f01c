using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.Histories;

/// <summary>The sums of a month, taken up movement by movement.</summary>
internal sealed class MonthSum(Currency currency)
{
    private readonly Dictionary<LedgerEnd, Money> where = [];
    private Money cameIn = Money.Zero(currency);
    private Money wentOut = Money.Zero(currency);
    private Money opened = Money.Zero(currency);
    private Money missing = Money.Zero(currency);

    /// <summary>By how much more is saved.</summary>
    public Money Saved { get; private set; } = Money.Zero(currency);

    /// <summary>By how much more is owed.</summary>
    public Money Owed { get; private set; } = Money.Zero(currency);

    /// <summary>What came in and went out.</summary>
    public Flow Flow => new(cameIn, wentOut, opened, missing, where.Where(pair => !pair.Value.IsZero).ToImmutableDictionary());

    /// <summary>Takes a movement that stands.</summary>
    public void Take(MovedAmount movement, Func<PotId, bool> saves)
    {
        Stand(movement.From, -movement.Amount, saves);
        Stand(movement.To, movement.Amount, saves);
        missing += Missed(movement.To, movement.Amount) - Missed(movement.From, movement.Amount);
        Go(Spent(movement.From), -movement.Amount);
        Go(Spent(movement.To) ?? Left(movement), movement.Amount);
        if (movement.From is LedgerEnd.At != movement.To is LedgerEnd.At)
        {
            Cross(movement.From is LedgerEnd.At ? movement.To : movement.From, movement);
        }
    }

    private void Stand(LedgerEnd end, Money more, Func<PotId, bool> saves)
    {
        Saved += IsSaved(end, saves) ? more : Money.Zero(currency);
        Owed -= end is LedgerEnd.Owed ? more : Money.Zero(currency);
    }

    private void Go(LedgerEnd? to, Money more)
    {
        if (to is not null)
        {
            where[to] = where.TryGetValue(to, out Money before) ? before + more : more;
        }
    }

    // Over the border of account and cash.
    private void Cross(LedgerEnd other, MovedAmount movement)
    {
        bool comes = movement.To is LedgerEnd.At;
        Money more = comes ? movement.Amount : -movement.Amount;
        switch (other)
        {
            case LedgerEnd.Outside { Kind: OutsideKind.Opening }:
                opened += more;
                break;
            case LedgerEnd.Outside { Kind: OutsideKind.Source }:
            case LedgerEnd.Outside { Kind: OutsideKind.Entry } when comes:
            case LedgerEnd.Owed when comes:
                cameIn += more;
                break;
            default:
                wentOut -= more;
                break;
        }
    }

    private Money Missed(LedgerEnd end, Money amount) => end is LedgerEnd.Outside { Kind: OutsideKind.Difference } ? amount : Money.Zero(currency);

    private static LedgerEnd? Spent(LedgerEnd end) => end switch
    {
        LedgerEnd.Outside { Kind: OutsideKind.Bill } => end,
        LedgerEnd.Outside { Kind: OutsideKind.Spending or OutsideKind.Difference } spent => LedgerEnd.SpentFrom(spent.PotId),
        _ => null,
    };

    // What waited for a card was spent when it was bought; a fee that goes on a debt is paid with the debt.
    private static LedgerEnd? Left(MovedAmount movement) => (movement.From, movement.To) switch
    {
        (LedgerEnd.At { Purpose.Kind: PurposeKind.ForCard }, LedgerEnd.Owed) => null,
        (LedgerEnd.At, LedgerEnd.Owed or LedgerEnd.Outside { Kind: OutsideKind.Entry }) => movement.To,
        _ => null,
    };

    private static bool IsSaved(LedgerEnd end, Func<PotId, bool> saves) => end is LedgerEnd.At { Purpose: var purpose }
        && (purpose.Kind == PurposeKind.Buffer || (purpose is { Kind: PurposeKind.Pot or PurposeKind.KeptBack or PurposeKind.Wallet, PotId: { } pot } && saves(pot)));
}
