using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Debts;
using Payday.Store.Fields;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Calculators;

/// <summary>The input of the <c>debts</c> calculator.</summary>
/// <param name="Currency">The currency of all amounts.</param>
/// <param name="From">The first month in which interest accrues and payments are made.</param>
/// <param name="Debts">The debts as they stand.</param>
internal sealed record DebtsFile(Currency Currency, YearMonth From, ImmutableArray<DebtState> Debts)
{
    private const int MostDebts = 500;
    private const int HighestRate = 10;

    /// <summary>Reads it.</summary>
    public static DebtsFile Read(JsonCursor file)
    {
        JsonFields fields = file.Fields();
        Currency currency = CalculatorFields.CurrencyOf(fields);
        LocalDate from = fields.Required("from").Date();
        JsonCursor list = fields.Required("debts");
        IReadOnlyList<JsonCursor> items = list.Items(MostDebts);
        ImmutableArray<DebtState> debts = [.. items.Select(debt => ReadDebt(debt, currency))];
        foreach ((JsonCursor item, DebtState debt) in items.Zip(debts))
        {
            if (item.IsSound && debts.Count(other => other.Name == debt.Name) > 1)
            {
                item.Refuse("Two debts have this name; give each a name of its own.");
            }
        }

        fields.RefuseOthers();
        return new DebtsFile(currency, from.ToYearMonth(), debts);
    }

    private static DebtState ReadDebt(JsonCursor debt, Currency currency)
    {
        JsonFields fields = debt.Fields();
        string name = fields.Required("name").OneLine(CalculatorFields.LongestName);
        var state = new DebtState(
            name,
            name,
            fields.Required("balance").Amount(currency),
            fields.Required("rate").Fraction(HighestRate),
            MinimumFormat.Read(fields.Required("minimum"), currency));
        fields.RefuseOthers();
        return state;
    }
}
