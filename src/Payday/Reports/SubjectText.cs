using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Reports;

/// <summary>What movements are about, by the name the person gave it.</summary>
internal static class SubjectText
{
    /// <summary>All that movements of a household can be about: pots, bills, debts and sources in its order.</summary>
    public static IEnumerable<LedgerSubject> All(Household household) =>
    [
        .. household.Pots.Select(pot => new LedgerSubject(SubjectKind.Pot, pot.Id)),
        .. household.Bills.Select(bill => new LedgerSubject(SubjectKind.Bill, bill.Id)),
        .. household.Debts.Select(debt => new LedgerSubject(SubjectKind.Debt, debt.Id)),
        .. household.Sources.Select(source => new LedgerSubject(SubjectKind.Source, source.Id)),
    ];

    /// <summary>Its name; its id where the household has it no more.</summary>
    public static string Of(Household household, LedgerSubject subject) => (subject.Kind switch
    {
        SubjectKind.Pot => household.Pots.FirstOrDefault(pot => pot.Id == subject.Id)?.Name,
        SubjectKind.Bill => household.Bills.FirstOrDefault(bill => bill.Id == subject.Id)?.Name,
        SubjectKind.Debt => household.Debts.FirstOrDefault(debt => debt.Id == subject.Id)?.Name,
        _ => household.Sources.FirstOrDefault(source => source.Id == subject.Id)?.Name,
    }) ?? subject.Id;

    /// <summary>The list it is in, e.g. <c>pot</c>.</summary>
    public static string List(SubjectKind kind) => kind switch
    {
        SubjectKind.Pot => "pot",
        SubjectKind.Bill => "bill",
        SubjectKind.Debt => "debt",
        _ => "income",
    };
}
