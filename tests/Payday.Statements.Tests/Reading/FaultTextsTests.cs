using Payday.Statements.Faults;

namespace Payday.Statements.Tests.Reading;

public sealed class FaultTextsTests
{
    [Fact]
    public void Of_EachKind_IsASentenceWithItsLine() => Assert.All(Enum.GetValues<FaultKind>(), kind =>
    {
        string text = FaultTexts.Of(new StatementFault(kind, 7, "x", "y"));

        Assert.StartsWith("Line 7: ", text, StringComparison.Ordinal);
        Assert.EndsWith(".", text, StringComparison.Ordinal);
    });

    [Fact]
    public void Of_FaultOfTheFile_NamesNoLine() => Assert.Equal("The file is empty.", FaultTexts.Of(new StatementFault(FaultKind.Empty, 0)));
}
