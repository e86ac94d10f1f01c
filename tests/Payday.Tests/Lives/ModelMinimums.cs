namespace Payday.Tests.Lives;

/// <summary>A debt on a payday.</summary>
/// <param name="Due">When its minimum falls due in the period, or did before it and was not paid; or null.</param>
/// <param name="Interest">Of the due's month, where it isn't charged yet.</param>
/// <param name="Expected">The same where its day is still to come.</param>
/// <param name="Paid">Whether it is taken as having left the account: on its day, where that is past.</param>
/// <param name="Then">What is owed afterwards.</param>
internal sealed record ModelMinimum(string Debt, DateOnly? Due, long Balance, long Interest, long Expected, long Minimum, long Payment, bool Paid, DateOnly On, long Then);

/// <summary>The minimums that a payday covers (design, 5.6 and 9).</summary>
internal static class ModelMinimums
{
    /// <summary>A row for each minimum not paid up to the period's end, or one for a debt at rest.</summary>
    public static IReadOnlyList<ModelMinimum> Of(ModelBook book, DateOnly on, DateOnly until) => [.. book.Debts.SelectMany(debt => Rows(book, debt, on, until))];

    /// <summary>What today gives for a debt beyond what waits for it in the account.</summary>
    public static long Taken(ModelBook book, IEnumerable<ModelMinimum> rows, string debt)
    {
        ModelMinimum[] own = [.. rows.Where(row => row.Debt == debt)];
        return own is [{ Due: null, Then: > 0 }] ? 0 : own.Sum(row => row.Payment) - book.Ledger.Has(ModelLedger.ForDebt(debt));
    }

    private static IEnumerable<ModelMinimum> Rows(ModelBook book, ModelDebt debt, DateOnly on, DateOnly until)
    {
        long balance = book.Ledger.OwedOn(debt.Name);
        long held = book.Ledger.Has(ModelLedger.ForDebt(debt.Name));
        DateOnly? last = book.Closed.Count == 0 ? null : book.Closed[^1].On;
        DateOnly[] dues = balance <= 0 ? [] : [.. ModelDates.EachMonth(debt.Day).Where(date => date >= LifeHousehold.Start && date <= until && !book.IsCovered(debt.Name, date, paid: true))];
        if (dues.Length == 0)
        {
            yield return new ModelMinimum(debt.Name, null, balance, 0, 0, 0, 0, false, on, balance);
        }

        long planned = 0;
        long charged = 0;
        foreach (DateOnly due in dues)
        {
            // Up to the last payday all is charged. Charged on what is owed when the day begins; what is planned before it counts.
            long interest = due <= last ? 0 : debt.Interest(Math.Max(0, book.Ledger.OwedAtTheBeginning(debt.Name, due) + charged - planned));
            charged += interest;
            long minimum = Math.Min(debt.Nominal(balance), balance + interest);
            long payment = Math.Min(book.CoveredWith(debt.Name, due) ?? minimum, balance + interest);
            DateOnly paidOn = due < on && !(due < last) && held >= payment ? due : on;
            yield return new ModelMinimum(debt.Name, due, balance, interest, due > on ? interest : 0, minimum, payment, due <= on, paidOn, balance + interest - payment);
            held = Math.Max(0, held - payment);
            balance += interest - payment;
            planned += payment;
        }
    }
}
