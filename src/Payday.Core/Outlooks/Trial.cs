using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;

namespace Payday.Core.Outlooks;

/// <summary>An amount of the household that is another one on trial, from the next payday on. One of the nested cases.</summary>
public abstract record Trial
{
    private Trial()
    {
    }

    /// <summary>What a bill would come to each time.</summary>
    /// <param name="Id">The bill.</param>
    /// <param name="Amount">Zero or more.</param>
    public sealed record OfBill(BillId Id, Money Amount) : Trial;

    /// <summary>What a source would pay each time.</summary>
    /// <param name="Id">The source.</param>
    /// <param name="Amount">Zero or more.</param>
    public sealed record OfSource(SourceId Id, Money Amount) : Trial;

    /// <summary>Reads one as a person types it, such as <c>Rent=1700</c>: a bill or an income source, and what it would come to.</summary>
    /// <param name="household">The household.</param>
    /// <param name="text">What was typed; a name may hold an equals sign, the amount can't.</param>
    public static Result<Trial> Parse(Household household, string text)
    {
        ArgumentNullException.ThrowIfNull(household);
        ArgumentNullException.ThrowIfNull(text);
        if (text.LastIndexOf('=') is not (> 0 and var at))
        {
            return Result.Refused<Trial>(new OutlookFault.NoPair());
        }

        string name = text[..at].Trim();
        Trial[] named =
        [
            .. household.Bills.Where(bill => IsCalled(bill.Name, name)).Select(bill => new OfBill(bill.Id, bill.Amount)),
            .. household.Sources.Where(source => IsCalled(source.Name, name)).Select(source => new OfSource(source.Id, source.Expected)),
        ];
        if (named is not [var trial])
        {
            return Result.Refused<Trial>(named.Length > 1
                ? new OutlookFault.TwoOfThatName(name)
                : new OutlookFault.NoSuchName(name, [.. household.Bills.Select(bill => bill.Name), .. household.Sources.Select(source => source.Name)]));
        }

        Result<Money> amount = Money.ParseSum(text[(at + 1)..], household.Currency, household.Settings.Numbers);
        return amount.Then(value => value.IsNegative
            ? Result.Refused<Trial>(new OutlookFault.BelowZero(name))
            : Result.Of<Trial>(trial is OfBill bill ? bill with { Amount = value } : (OfSource)trial with { Amount = value }));
    }

    /// <summary>A book with this changed, also where the amount would change later on: nothing of what has happened changes, only what is expected.</summary>
    public Book In(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book with
        {
            Household = this switch
            {
                OfBill trial => book.Household with
                {
                    Bills = [.. book.Household.Bills.Select(bill => bill.Id == trial.Id ? bill with { Amount = trial.Amount, Later = LaterAmounts.None } : bill)],
                },
                OfSource trial => book.Household with
                {
                    Sources = [.. book.Household.Sources.Select(source => source.Id == trial.Id ? source with { Expected = trial.Amount, Later = LaterAmounts.None } : source)],
                },
                _ => book.Household,
            },
        };
    }

    private static bool IsCalled(string known, string name) => string.Equals(known, name, StringComparison.OrdinalIgnoreCase);
}
