using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Reports;

/// <summary>What movements are about, by the name the person gave it.</summary>
internal static class SubjectText
{
    /// <summary>All that movements of a household can be about: pots, bills, debts and sources in its order.</summary>
    public static IEnumerable<LedgerSubject> All(Household household) =>
    [
        .. household.Pots.Select(pot => new LedgerSubject.OfPot(pot.Id)),
        .. household.Bills.Select(bill => new LedgerSubject.OfBill(bill.Id)),
        .. household.Debts.Select(debt => new LedgerSubject.OfDebt(debt.Id)),
        .. household.Sources.Select(source => new LedgerSubject.OfSource(source.Id)),
    ];

    /// <summary>Its name; its id where the household has it no more.</summary>
    public static string Of(Household household, LedgerSubject subject) => subject switch
    {
        LedgerSubject.OfPot pot => EndText.Pot(household, pot.Id),
        LedgerSubject.OfBill bill => EndText.Bill(household, bill.Id),
        LedgerSubject.OfDebt debt => EndText.Debt(household, debt.Id),
        LedgerSubject.OfSource source => EndText.Source(household, source.Id),
        _ => "",
    };

    /// <summary>The list it is in, e.g. <c>pot</c>.</summary>
    public static string List(LedgerSubject subject) => subject switch
    {
        LedgerSubject.OfPot => "pot",
        LedgerSubject.OfBill => "bill",
        LedgerSubject.OfDebt => "debt",
        _ => "income",
    };
}
