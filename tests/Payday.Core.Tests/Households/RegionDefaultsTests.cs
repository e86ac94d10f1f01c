using Payday.Core.Households;

namespace Payday.Core.Tests.Households;

/// <summary>What a locale says of the region.</summary>
public sealed class RegionDefaultsTests
{
    [Theory]
    [InlineData("en_US.UTF-8", "USD 1,234.56")]
    [InlineData("de_DE@euro", "EUR 1.234,56")]
    [InlineData("en_IE", "EUR 1,234.56")]
    [InlineData("fr_CH.UTF-8", "CHF 1'234.56")]
    [InlineData("nb_NO.UTF-8", "NOK 1 234,56")]
    [InlineData("C.UTF-8", null)]
    [InlineData("POSIX", null)]
    [InlineData("en_XX.UTF-8", null)]
    [InlineData("en_us", null)]
    [InlineData("_", null)]
    [InlineData("", null)]
    [InlineData(null, null)]
    public void OfLocale_IsWhatIsUsualThere(string? locale, string? expected) =>
        Assert.Equal(expected, RegionDefaults.OfLocale(locale) is { } usual ? $"{usual.Currency.Code} {usual.Numbers.Sample}" : null);
}
