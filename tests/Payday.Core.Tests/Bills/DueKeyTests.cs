using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Ids;

namespace Payday.Core.Tests.Bills;

public class DueKeyTests
{
    private static readonly LocalDate Day = new(2026, 3, 6);

    [Fact]
    public void Owner_BillOrDebt_IsJustThat()
    {
        Assert.Equal((new BillId("rent"), null), (DueOwner.Of(new BillId("rent")).Bill, DueOwner.Of(new BillId("rent")).Debt));
        Assert.Equal((null, new DebtId("rent")), (DueOwner.Of(new DebtId("rent")).Bill, DueOwner.Of(new DebtId("rent")).Debt));
        Assert.NotEqual(DueOwner.Of(new BillId("rent")), DueOwner.Of(new DebtId("rent")));
    }

    // Each comes before all that stand after it.
    [Fact]
    public void CompareTo_ByDateThenIdThenBillsFirst_IsOneOrder()
    {
        DueKey[] inOrder =
        [
            new(new DebtId("zoo"), Day.PlusDays(-1)), new(new BillId("Rent"), Day), new(new BillId("car"), Day), new(new DebtId("car"), Day),
            new(new BillId("rent"), Day), new(new BillId("car"), Day.PlusDays(1)),
        ];

        for (int i = 0; i < inOrder.Length; i++)
        {
            for (int j = 0; j < inOrder.Length; j++)
            {
                Assert.Equal(Math.Sign(i - j), Math.Sign(inOrder[i].CompareTo(inOrder[j])));
                Assert.Equal(((i < j), (i > j), i <= j, i >= j), ((inOrder[i] < inOrder[j]), (inOrder[i] > inOrder[j]), inOrder[i] <= inOrder[j], inOrder[i] >= inOrder[j]));
            }
        }

        DueOwner[] owners = [DueOwner.Of(new BillId("car")), DueOwner.Of(new DebtId("car")), DueOwner.Of(new BillId("rent"))];
        for (int i = 0; i < owners.Length; i++)
        {
            for (int j = 0; j < owners.Length; j++)
            {
                Assert.Equal(((i < j), (i > j), i <= j, i >= j), ((owners[i] < owners[j]), (owners[i] > owners[j]), owners[i] <= owners[j], owners[i] >= owners[j]));
            }
        }
    }
}
