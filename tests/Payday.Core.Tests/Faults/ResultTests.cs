using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Core.Tests.Faults;

public sealed class ResultTests
{
    private static readonly Fault First = new Sample(1);
    private static readonly Fault Second = new Sample(2);

    [Fact]
    public void Of_AValue_IsOkWithoutFaults()
    {
        Result<int> result = Result.Of(7);

        Assert.True(result.Ok);
        Assert.Equal(7, result.Value);
        Assert.Null(result.Fault);
        Assert.Empty(result.Faults);
    }

    [Fact]
    public void Refused_ManyFaults_KeepsAllAndLeadsWithTheFirst()
    {
        Result<int> result = Result.Refused<int>(First, Second);

        Assert.False(result.Ok);
        Assert.Equal(First, result.Fault);
        Assert.Equal([First, Second], result.Faults);
    }

    [Fact]
    public void Refused_NoFault_Throws() => Assert.Throws<ArgumentException>(() => Result.Refused<int>(ImmutableArray<Fault>.Empty));

    [Fact]
    public void Default_IsOkAndEmpty()
    {
        Assert.True(default(Result<string>).Ok);
        Assert.Empty(default(Result<string>).Faults);
    }

    [Fact]
    public void Then_OfAValue_GoesOn()
    {
        Assert.Equal(Result.Of("7"), Result.Of(7).Then(seven => Result.Of($"{seven}")));
        Assert.Equal(Result.Refused<string>(Second), Result.Of(7).Then(_ => Result.Refused<string>(Second)));
        Assert.Equal(Result.Of(8), Result.Of(7).Map(seven => seven + 1));
    }

    [Fact]
    public void Then_OfARefusal_KeepsItsFaultsAndAsksNoMore()
    {
        Result<int> refused = Result.Refused<int>(First, Second);

        Assert.Equal([First, Second], refused.Then<string>(_ => throw new InvalidOperationException()).Faults);
        Assert.Equal([First, Second], refused.Map<string>(_ => throw new InvalidOperationException()).Faults);
    }

    [Fact]
    public void Equals_SameFaultsInTheSameOrder_Only()
    {
        Assert.Equal(Result.Refused<int>(First, Second), Result.Refused<int>(new Sample(1), new Sample(2)));
        Assert.Equal(Result.Refused<int>(First).GetHashCode(), Result.Refused<int>(new Sample(1)).GetHashCode());
        Assert.NotEqual(Result.Refused<int>(First, Second), Result.Refused<int>(Second, First));
        Assert.NotEqual(Result.Of(0), Result.Refused<int>(First));
    }

    private sealed record Sample(int Number) : Fault;
}
