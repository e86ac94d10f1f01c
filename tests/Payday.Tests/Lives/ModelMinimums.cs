namespace Payday.Tests.Lives;

/// <summary>A debt on a payday.</summary>
/// <param name="Due">When its minimum falls due in the period, or null.</param>
/// <param name="Then">What is owed afterwards.</param>
internal sealed record ModelMinimum(string Debt, DateOnly? Due, long Balance, long Interest, long Minimum, long Then)
{
    public long Payment => Minimum;
}

/// <summary>The minimums that a payday covers (design, 5.6 and 9).</summary>
internal static class ModelMinimums
{
    /// <summary>A row for each minimum due from the last one covered to the period's end, or one for a debt at rest.</summary>
    public static IReadOnlyList<ModelMinimum> Of(ModelBook book, DateOnly on, DateOnly until)
    {
        // Nothing that fell due before this payday and after the last period is left out.
        DateOnly from = book.Closed.Count == 0 ? LifeHousehold.Start : book.Closed[^1].Until.AddDays(1);
        return [.. book.Debts.SelectMany(debt => Rows(book, debt, from, until))];
    }

    private static IEnumerable<ModelMinimum> Rows(ModelBook book, ModelDebt debt, DateOnly from, DateOnly until)
    {
        long balance = book.Ledger.OwedOn(debt.Name);
        DateOnly[] dues = balance == 0 ? [] : [.. ModelDates.EachMonth(debt.Day).Where(date => date >= from && date <= until)];
        if (dues.Length == 0)
        {
            yield return new ModelMinimum(debt.Name, null, balance, 0, 0, balance);
        }

        foreach (DateOnly due in dues)
        {
            long interest = debt.Interest(balance);
            long minimum = debt.Minimum(balance);
            yield return new ModelMinimum(debt.Name, due, balance, interest, minimum, balance + interest - minimum);
            balance += interest - minimum;
        }
    }
}
