using System.Collections.Immutable;
using Payday.Core.Bills;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Tests.Ids;

public class IdTests
{
    // Stored lists are in this order, whatever the culture and whatever sort of id they hold.
    [Fact]
    public void CompareTo_AnyTexts_IsOrdinal()
    {
        string[] texts = ["a", "B", "ab", "a-b", "ä", "Z", "a1", "10", "9"];
        string[] ordinal = [.. texts.Order(StringComparer.Ordinal)];

        Assert.Equal(ordinal, texts.Select(text => new PotId(text)).Order().Select(id => id.Text));
        Assert.Equal(ordinal, texts.Select(text => new BillId(text)).Order().Select(id => id.Text));
        Assert.Equal(ordinal, texts.Select(text => new DebtId(text)).Order().Select(id => id.Text));
        Assert.Equal(ordinal, texts.Select(text => new SourceId(text)).Order().Select(id => id.Text));
        Assert.Equal(ordinal, texts.ToImmutableSortedDictionary(text => new PotId(text), text => text).Values);
    }

    [Fact]
    public void Equals_OtherCase_IsAnother()
    {
        Assert.NotEqual(new PotId("food"), new PotId("Food"));
        Assert.Equal(new PotId("food"), new PotId(string.Concat("fo", "od")));
        Assert.Equal("food", $"{new PotId("food")}");
    }

    // A bill and a debt of one name are two owners of dues.
    [Fact]
    public void DueOwner_BillAndDebtOfOneId_Differ()
    {
        DueOwner bill = DueOwner.Of(new BillId("car"));
        DueOwner debt = DueOwner.Of(new DebtId("car"));

        Assert.NotEqual(bill, debt);
        Assert.True(bill < debt);
        Assert.True(debt < DueOwner.Of(new BillId("rent")));
        Assert.Equal((new BillId("car"), null), (bill.Bill, bill.Debt));
        Assert.Equal((null, new DebtId("car")), (debt.Bill, debt.Debt));
    }

    [Fact]
    public void MoveTarget_PotAndDebtOfOneId_Differ()
    {
        Assert.NotEqual(MoveTarget.Pot(new PotId("car")), MoveTarget.Debt(new DebtId("car")));
        Assert.Equal(("car", "car", ""), (MoveTarget.Pot(new PotId("car")).IdText, MoveTarget.Debt(new DebtId("car")).IdText, MoveTarget.Buffer.IdText));
    }

    [Theory]
    [InlineData("account/set-aside:car", null, "car", null, null)]
    [InlineData("account/pot:car", "car", null, null, null)]
    [InlineData("account/kept-back:car", "car", null, null, null)]
    [InlineData("cash/owed-back:car", "car", null, null, null)]
    [InlineData("cash/wallet:car", "car", null, null, null)]
    [InlineData("account/buffer", null, null, null, null)]
    [InlineData("account/left-to-place", null, null, null, null)]
    [InlineData("outside/bill:car", null, "car", null, null)]
    [InlineData("outside/interest:car", null, null, "car", null)]
    [InlineData("outside/source:car", null, null, null, "car")]
    [InlineData("outside/spending:car", "car", null, null, null)]
    [InlineData("outside/spending", null, null, null, null)]
    [InlineData("outside/difference:car", "car", null, null, null)]
    [InlineData("outside/opening", null, null, null, null)]
    public void End_OfAKey_HasTheIdItMeansAlone(string key, string? pot, string? bill, string? debt, string? source)
    {
        var end = LedgerEnd.FromKey(key);
        (PotId? Pot, BillId? Bill, DebtId? Debt, SourceId? Source) ids = end switch
        {
            LedgerEnd.At held => (held.Purpose.PotId, held.Purpose.BillId, null, null),
            LedgerEnd.Outside outside => (outside.PotId, outside.BillId, outside.DebtId, outside.SourceId),
            _ => default,
        };

        Assert.Equal((pot, bill, debt, source), (ids.Pot?.Text, ids.Bill?.Text, ids.Debt?.Text, ids.Source?.Text));
        Assert.Equal(key, end.Key);
    }
}
