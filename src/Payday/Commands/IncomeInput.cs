using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Routines;

namespace Payday.Commands;

/// <summary>Reads <c>--income "Name=AMOUNT"</c> into a draft.</summary>
internal static class IncomeInput
{
    private const int LongestName = 60;

    /// <summary>The draft with the incomes told.</summary>
    /// <returns>The draft; or what is wrong with the first that can't be read.</returns>
    public static Read<RoutineDraft> Apply(Book book, RoutineDraft draft, IEnumerable<string> incomes)
    {
        foreach (string income in incomes)
        {
            // A name may hold an equals sign, an amount can't.
            int at = income.LastIndexOf('=');
            string name = at < 0 ? "" : income[..at].Trim();
            if (name.Length is 0 or > LongestName || name.Any(char.IsControl))
            {
                return Read.Refused<RoutineDraft>($"--income {income}: write it like \"Night shifts=1204.55\", with a name of at most {LongestName} plain characters.");
            }

            Read<Money> amount = CommandInput.Amount($"--income {name}", income[(at + 1)..], book.Household.Currency, book.Household.Settings.Numbers);
            if (!amount.Ok)
            {
                return Read.Refused<RoutineDraft>(amount.Fault);
            }

            IncomeSource? source = book.Household.Sources.FirstOrDefault(
                known => string.Equals(known.Name, name, StringComparison.OrdinalIgnoreCase));
            string oneOff = draft.OneOffs.Keys.FirstOrDefault(key => string.Equals(key, name, StringComparison.OrdinalIgnoreCase)) ?? name;
            draft = source is null
                ? draft with { OneOffs = draft.OneOffs.SetItem(oneOff, amount.Value) }
                : draft with { Incomes = draft.Incomes.SetItem(source.Id, amount.Value) };
        }

        return Read.Of(draft);
    }
}
