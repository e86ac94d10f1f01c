using Payday.Commands;

namespace Payday.Tests.Commands;

public sealed class OwnFaultTests
{
    [Fact]
    public void Sentence_OfAFault_SaysWhereAndNothingOfTheHousehold()
    {
        string said = OwnFault.Sentence(Thrown());

        Assert.StartsWith($"Payday met a fault of its own (InvalidOperationException at {typeof(OwnFaultTests).FullName}.{nameof(Fail)})", said, StringComparison.Ordinal);
        Assert.DoesNotContain("1,640.00", said, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Sentence_OfAFaultThatWasNeverThrown_SaysWhatItIs() =>
        Assert.StartsWith("Payday met a fault of its own (FormatException). ", OwnFault.Sentence(new FormatException("Rent")), StringComparison.Ordinal);

    private static Exception Thrown()
    {
        try
        {
            Fail();
        }
        catch (InvalidOperationException fault)
        {
            return fault;
        }

        throw new InvalidOperationException("Nothing was thrown.");
    }

    private static void Fail() => throw new InvalidOperationException("Rent of 1,640.00 is gone.");
}
