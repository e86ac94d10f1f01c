using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Ledgers;

/// <summary>What a calendar month did.</summary>
/// <param name="Month">The month.</param>
/// <param name="CameIn">From income sources, and by account entries: interest, gifts, transfers.</param>
/// <param name="Bills">Paid to bills.</param>
/// <param name="DebtPayments">Paid on debts.</param>
/// <param name="Interest">Charged by lenders.</param>
/// <param name="Fills">Put in pots, less what was taken from them again for another purpose; rounding is not among that.</param>
/// <param name="Spent">Spent from pots, and by account entries: fees, gifts, transfers, losses.</param>
/// <param name="Owed">What is owed on all debts at the month's end.</param>
/// <param name="Rounding">What pots gave to the buffer because card purchases are owed back in whole notes; zero or more.</param>
/// <param name="Missing">What counts didn't find, less what they found and what was cleared up of either; below zero where more was found.</param>
public sealed record MonthSummary(
    YearMonth Month,
    Money CameIn,
    Money Bills,
    Money DebtPayments,
    Money Interest,
    Money Fills,
    Money Spent,
    Money Owed,
    Money Rounding,
    Money Missing)
{
    /// <summary>The months of a year that have something to say: none before the household began, and none to come that no movement has.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="year">The year.</param>
    /// <param name="start">When the household began.</param>
    /// <param name="today">The date.</param>
    /// <param name="roundings">The numbers of the movements that are rounding.</param>
    public static ImmutableArray<MonthSummary> OfYear(Ledger ledger, int year, LocalDate start, LocalDate today, IReadOnlySet<long> roundings)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        LocalDate last = ledger.Moved.Select(movement => movement.Date).Append(today).Max();
        return [.. OfYear(ledger, year, roundings).Where(month => month.Month >= start.ToYearMonth() && month.Month <= last.ToYearMonth())];
    }

    /// <summary>The twelve months of a year, by the dates of the movements that stand: one undone in a later month is missing from its own.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="year">The year.</param>
    /// <param name="roundings">The numbers of the movements that are rounding; null for none.</param>
    public static ImmutableArray<MonthSummary> OfYear(Ledger ledger, int year, IReadOnlySet<long>? roundings = null)
    {
        ArgumentNullException.ThrowIfNull(ledger);
        Currency currency = ledger.Balances.Currency;
        Money nothing = Money.Zero(currency);
        var months = new MonthSummary[12];
        for (int i = 0; i < months.Length; i++)
        {
            months[i] = new MonthSummary(new YearMonth(year, i + 1), nothing, nothing, nothing, nothing, nothing, nothing, nothing, nothing, nothing);
        }

        // By how much more is owed in each month, of the first with all that was before.
        Money[] more = [.. months.Select(month => month.Owed)];
        foreach (MovedAmount movement in ledger.Moved.Where(movement => movement.Date.Year <= year))
        {
            int first = movement.Date.Year < year ? 0 : movement.Date.Month - 1;
            if (IsOwed(movement.From) || IsOwed(movement.To))
            {
                more[first] -= Change(movement, IsOwed);
            }

            if (movement.Date.Year == year)
            {
                months[first] = roundings?.Contains(movement.Number) == true
                    ? months[first] with { Rounding = months[first].Rounding + movement.Amount }
                    : months[first].With(movement);
            }
        }

        Money owed = nothing;
        return [.. months.Select((month, i) => month with { Owed = owed += more[i] })];
    }

    private MonthSummary With(MovedAmount movement) => this with
    {
        CameIn = CameIn - Change(movement, end => Is(end, OutsideKind.Source)) + (Is(movement.From, OutsideKind.Entry) ? movement.Amount : Money.Zero(CameIn.Currency)),
        Bills = Bills + Change(movement, end => Is(end, OutsideKind.Bill)),
        DebtPayments = DebtPayments + (movement.From is LedgerEnd.At ? Change(movement, IsOwed) : Money.Zero(CameIn.Currency)),
        Interest = Interest + Change(movement, end => Is(end, OutsideKind.Interest)),
        Fills = Fills + (movement.From is LedgerEnd.At && movement.To is LedgerEnd.At && !IsForCard(movement.From) && !IsForCard(movement.To) ? Change(movement, IsInPot) : Money.Zero(CameIn.Currency)),
        Spent = Spent + Change(movement, end => Is(end, OutsideKind.Spending)) + (Is(movement.To, OutsideKind.Entry) && movement.From is LedgerEnd.At ? movement.Amount : Money.Zero(CameIn.Currency)),
        Missing = Missing + Change(movement, end => Is(end, OutsideKind.Difference)),
    };

    private static Money Change(MovedAmount movement, Func<LedgerEnd, bool> counts)
    {
        Money change = Money.Zero(movement.Amount.Currency);
        change += counts(movement.To) ? movement.Amount : Money.Zero(change.Currency);
        return counts(movement.From) ? change - movement.Amount : change;
    }

    // What waits for a card was spent already.
    private static bool IsForCard(LedgerEnd end) => end is LedgerEnd.At { Purpose.Kind: PurposeKind.ForCard };

    private static bool IsOwed(LedgerEnd end) => end is LedgerEnd.Owed;

    private static bool IsInPot(LedgerEnd end) => end is LedgerEnd.At { Purpose.Kind: PurposeKind.Pot or PurposeKind.KeptBack or PurposeKind.Wallet or PurposeKind.OwedBack };

    private static bool Is(LedgerEnd end, OutsideKind kind) => end is LedgerEnd.Outside outside && outside.Kind == kind;
}
