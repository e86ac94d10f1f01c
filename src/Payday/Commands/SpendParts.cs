using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Debts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads what a purchase is for on a command line: a pot and an amount, or several pots with theirs.</summary>
internal static class SpendParts
{
    /// <summary>Whether it is <c>POT AMOUNT</c>: an amount has no equals sign, and a pot alone has the rest of a total.</summary>
    public static bool IsOne(Household household, IReadOnlyList<string> said, bool hasTotal) =>
        said is [var pot, var amount] && !hasTotal && PotInput.Pair(amount) is null && (PotInput.Pair(pot) is null || PotInput.Pot(household, pot).Ok);

    /// <summary><c>POT=AMOUNT</c>, or a pot alone, which has the rest; its amount then is null.</summary>
    public static Result<(PotId? PotId, Money? Amount)> Of(Household household, string text)
    {
        Result<PotOrBuffer> alone = PotInput.PotOrBuffer(household, text);
        if (alone.Ok)
        {
            return Result.Of<(PotId?, Money?)>((alone.Value.PotId, null));
        }

        if (PotInput.Pair(text) is not var (name, value))
        {
            return text.Trim().Length == 0 ? Refused(new ArgumentFault.NoPart(text)) : Refused(alone.Fault);
        }

        Result<PotOrBuffer> pot = PotInput.PotOrBuffer(household, name);
        Result<Money> amount = Money.ParseSum(value, household.Currency, household.Settings.Numbers);
        return !pot.Ok ? Refused(pot.Fault)
            : !amount.Ok ? Refused(new ArgumentFault.Of(text, amount.Fault))
            : Result.Of<(PotId?, Money?)>((pot.Value.PotId, amount.Value));
    }

    /// <summary>All of them with their amounts.</summary>
    public static Result<ImmutableArray<PurchasePart>> All(Book book, IEnumerable<string> said, Money? total)
    {
        var parts = new List<(PotId? PotId, Money? Amount)>();
        foreach (string text in said)
        {
            Result<(PotId? PotId, Money? Amount)> part = Of(book.Household, text);
            if (!part.Ok)
            {
                return Result.Refused<ImmutableArray<PurchasePart>>(part.Faults);
            }

            parts.Add(part.Value);
        }

        return PurchaseParts.Of(parts, total);
    }

    /// <summary>The debt whose card paid, by its name, whatever the case, or by its id; null where none is named.</summary>
    /// <param name="household">The household.</param>
    /// <param name="option">The option.</param>
    /// <param name="name">What was given.</param>
    public static Result<Debt?> Card(Household household, string option, string? name) => name is null ? Result.Of<Debt?>(null)
        : (household.Debts.FirstOrDefault(debt => string.Equals(debt.Name, name.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? household.Debts.FirstOrDefault(debt => debt.Id.Text == name.Trim())) is { } debt
            ? Result.Of<Debt?>(debt)
            : Result.Refused<Debt?>(new ArgumentFault.NoSuchDebt($"{option} {name}", [.. household.Debts.Select(known => known.Name)]));

    private static Result<(PotId? PotId, Money? Amount)> Refused(Fault fault) => Result.Refused<(PotId?, Money?)>(fault);
}
