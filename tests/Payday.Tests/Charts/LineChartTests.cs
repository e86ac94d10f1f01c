using CsCheck;
using Payday.Charts;
using Payday.Core.Amounts;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Charts;

/// <summary>Amounts as a line of dots, as text.</summary>
public sealed class LineChartTests
{
    private static readonly Currency Dollars = Currency.FromCode("USD");
    private static readonly Money[] Year = [.. new[] { 1200, 400, 2600, 1900, -300, 0, 3100, 2500, 2500, 900, 4000, 3999 }.Select(amount => Of(amount))];

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(132)]
    public void Lines_OfAYear_AreAsRecorded(int width)
    {
        string[] lines = [.. LineChart.Lines(Year, width, 6, NumberStyle.CommaPoint)];
        Golden.Equal($"line-{width}", [.. lines, "", .. lines.Select(TextFold.ToAscii)]);
    }

    [Fact]
    public void Lines_AllTheSame_AreLevelAtTheTop()
    {
        string[] lines = [.. LineChart.Lines([Of(5), Of(5), Of(5)], 12, 3, NumberStyle.CommaPoint)];

        Assert.Equal(["5.00 │⠉⠉⠉⠉⠉⠉", "     │", "0.00 │"], lines);
        Assert.Equal("0.00 |......", TextFold.ToAscii(LineChart.Lines([Of(0)], 12, 2, NumberStyle.CommaPoint)[1]));
    }

    /// <summary>Whatever the amounts: as wide and as high as asked, the highest at the top, and one dot at least in each column.</summary>
    [Fact]
    public void Lines_AnyAmounts_FillTheRoomAndNoMore() => Gen.Select(Gen.Long[long.MinValue / 4, long.MaxValue / 4].Array[1, 40], Gen.Int[60, 200], Gen.Int[2, 12]).Sample(
        (amounts, width, height) =>
        {
            string[] lines = [.. LineChart.Lines([.. amounts.Select(amount => Money.FromMinorUnits(amount, Dollars))], width, height, NumberStyle.CommaPoint)];
            int margin = lines[0].IndexOf('│', StringComparison.Ordinal) + 1;

            Assert.Equal(height, lines.Length);
            Assert.All(lines, line => Assert.True(TextColumns.Width(line) <= width));
            for (int column = margin; column < width; column++)
            {
                Assert.Contains(lines, line => line.Length > column && line[column] != ' ');
            }
        },
        iter: 500);

    private static Money Of(int amount) => Money.FromMinorUnits(amount * 100L, Dollars);
}
