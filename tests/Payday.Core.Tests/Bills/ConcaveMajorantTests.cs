using Payday.Core.Bills;

namespace Payday.Core.Tests.Bills;

/// <summary>The least concave line over points; heights worked out by hand on paper.</summary>
public class ConcaveMajorantTests
{
    // Points, then the heights over them.
    [Theory]
    [InlineData("10,5 20,8", "5 8")]
    [InlineData("10,2 20,8", "4 8")]
    [InlineData("10,0 20,0 30,10", "4 7 10")]
    [InlineData("3,0 6,0 9,9", "3 6 9")]
    [InlineData("10,9 20,9 30,12", "9 11 12")]
    [InlineData("10,5 20,10 30,15", "5 10 15")]
    [InlineData("10,6 10,8 20,10", "8 8 10")]
    public void RoundedUp_OfPoints_IsTheLeastLineOverThem(string points, string heights) => Assert.Equal(heights, Over(points));

    // A first payday that brings nothing, and something due by then: all of it is asked for at once.
    [Theory]
    [InlineData("0,5 10,8", "5 8")]
    [InlineData("0,2 0,5 10,5", "5 5 5")]
    [InlineData("0,0 10,8", "0 8")]
    public void RoundedUp_FromTheStart_RisesThereAtOnce(string points, string heights) => Assert.Equal(heights, Over(points));

    private static string Over(string points)
    {
        long[][] all = [.. points.Split(' ').Select(point => point.Split(',').Select(figure => long.Parse(figure, System.Globalization.CultureInfo.InvariantCulture)).ToArray())];
        return string.Join(' ', ConcaveMajorant.RoundedUp([.. all.Select(point => point[0])], [.. all.Select(point => point[1])]));
    }
}
