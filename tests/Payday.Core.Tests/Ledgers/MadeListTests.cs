using Payday.Core.Ledgers;

namespace Payday.Core.Tests.Ledgers;

public sealed class MadeListTests
{
    [Fact]
    public void Item_LookedAtAgain_IsTheSameObjectAndNoOtherIsMade()
    {
        List<int> made = [];
        var list = new MadeList<object>(1_000, at =>
        {
            made.Add(at);
            return new object();
        });

        object one = list[700];

        Assert.Same(one, list[700]);
        Assert.Equal([700], made);
        Assert.Equal(1_000, list.Distinct().Count());
        Assert.Same(one, list.ElementAt(700));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void Item_WhereNoneIs_Throws(int index) => Assert.Throws<ArgumentOutOfRangeException>(() => new MadeList<string>(3, _ => "")[index]);

    /// <summary>Who looks at the same time gets the same object, though each may make one.</summary>
    [Fact]
    public void Item_LookedAtByTwoAtOnce_IsOneObject()
    {
        using var both = new Barrier(2);
        var list = new MadeList<object>(1, _ =>
        {
            both.SignalAndWait(TestContext.Current.CancellationToken);
            return new object();
        });
        object? other = null;
        var second = new Thread(() => other = list[0]);
        second.Start();

        object one = list[0];
        second.Join();

        Assert.Same(one, other);
    }
}
