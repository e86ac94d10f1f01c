using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Follows what each debt's end sets free to the debts that get it, month by month.</summary>
internal sealed class RollOns
{
    private readonly Dictionary<(DebtId From, DebtId To), RollOn> all = [];
    private readonly Stack<(DebtId From, Money Amount)> parts = [];
    private Money extra;

    /// <summary>A month begins.</summary>
    /// <param name="own">What there is above the minimums that no debt's end set free; it is spent first.</param>
    /// <param name="free">What each debt sets free, zero or more, in the order in which the debts are listed.</param>
    public void Begin(Money own, IEnumerable<(DebtId From, Money Amount)> free)
    {
        extra = own;
        parts.Clear();
        foreach ((DebtId From, Money Amount) part in free.Reverse())
        {
            parts.Push(part);
        }
    }

    /// <summary>Something of what the month has above its minimums is paid on a debt.</summary>
    public void Pay(DebtId to, Money payment, YearMonth month)
    {
        Money own = Money.Min(extra, payment);
        extra -= own;
        payment -= own;
        while (payment.IsPositive && parts.TryPop(out (DebtId From, Money Amount) part))
        {
            Money taken = Money.Min(part.Amount, payment);
            payment -= taken;
            if (taken < part.Amount)
            {
                parts.Push((part.From, part.Amount - taken));
            }

            if (taken.IsPositive)
            {
                all[(part.From, to)] = all.TryGetValue((part.From, to), out RollOn? before)
                    ? before with { Total = before.Total + taken }
                    : new RollOn(part.From, to, month, taken);
            }
        }
    }

    /// <summary>All of them, in the order in which they began.</summary>
    public ImmutableArray<RollOn> Seen() => [.. all.Values];
}
