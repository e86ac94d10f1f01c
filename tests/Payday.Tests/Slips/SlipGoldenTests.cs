using Payday.Slips;
using Payday.Text;

namespace Payday.Tests.Slips;

public class SlipGoldenTests
{
    public static TheoryData<string, int> Slips => new MatrixTheoryData<string, int>(
        ["usd", "eur", "jpy", "big", "empty", "deposit", "machine"], [32, 42, 58, 80]);

    public static TheoryData<string, int> Sheets => new MatrixTheoryData<string, int>(
        ["usd", "eur", "jpy", "empty"], [32, 42, 58, 80]);

    [Theory]
    [MemberData(nameof(Slips))]
    public void SlipLayout_AtAWidth_IsAsRecorded(string name, int width) =>
        Check($"slip-{name}-{width}", SlipLayout.Lay(Samples.Slip(name), width), width);

    [Theory]
    [MemberData(nameof(Sheets))]
    public void FillingSheetLayout_AtAWidth_IsAsRecorded(string name, int width) =>
        Check($"sheet-{name}-{width}", FillingSheetLayout.Lay(Samples.Sheet(name), width), width);

    private static void Check(string golden, Paper paper, int width)
    {
        Assert.All(paper.Lines, line => Assert.InRange(TextColumns.Width(line), 0, width));
        Golden.Equal(golden, paper.Lines);
    }
}
