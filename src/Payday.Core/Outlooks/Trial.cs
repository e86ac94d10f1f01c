using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
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

    /// <summary>A book with this changed: nothing of what has happened changes, only what is expected.</summary>
    public Book In(Book book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book with
        {
            Household = this switch
            {
                OfBill trial => book.Household with
                {
                    Bills = [.. book.Household.Bills.Select(bill => bill.Id == trial.Id ? bill with { Amount = trial.Amount } : bill)],
                },
                OfSource trial => book.Household with
                {
                    Sources = [.. book.Household.Sources.Select(source => source.Id == trial.Id ? source with { Expected = trial.Amount } : source)],
                },
                _ => book.Household,
            },
        };
    }
}
