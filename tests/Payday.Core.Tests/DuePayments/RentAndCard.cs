using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;

namespace Payday.Core.Tests.DuePayments;

/// <summary>A household with one rent and one card, both due on the 15th, as the tests of due payments need it.</summary>
internal static class RentAndCard
{
    public static LocalDate Second { get; } = new(2026, 3, 20);

    public static LocalDate Third { get; } = new(2026, 4, 3);

    public static DueKey Rent { get; } = new(new BillId("rent"), new(2026, 3, 15));

    public static DueKey Card { get; } = new(new DebtId("card"), new(2026, 3, 15));

    public static DueKey AprilCard { get; } = new(new DebtId("card"), new(2026, 4, 15));

    public static Household Home { get; } = Bare with
    {
        Bills = [Bill("Rent", 150, new(2026, 3, 15))],
        Debts = [Debt("Card", 6400, 0.12m, 25, due: 15)],
        Opening = Bare.Opening with { Account = Usd(200) },
        Settings = Bare.Settings with { SetAsides = SetAsideMode.AsTheyFall },
    };

    /// <summary>150 is set aside for the rent of 15 March, 25 wait for the card's minimum of that day, and 200 stay in the buffer.</summary>
    public static Book March { get; } = WeekHomes.Close(Book.Begin(Home), Friday6March);

    public static Money Interest(Money owed) => owed.ClampToZero().MonthOfInterest(0.12m);

    public static DueLine[] Lines(Book book, LocalDate? today = null) => [.. DueLines.Of(book, (today ?? Second).PlusMonths(1))];

    public static Book Pay(Book book, DueEntry entry)
    {
        Result<Book> paid = Paying.Enter(book, entry, entry.Date);
        Assert.True(paid.Ok, paid.Fault.Said());
        return paid.Value;
    }
}
