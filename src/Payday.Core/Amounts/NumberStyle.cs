namespace Payday.Core.Amounts;

/// <summary>How a household writes numbers: the mark before the decimals and the one between groups of three.</summary>
/// <remarks>
/// A value of its own rather than a culture, so that the same file reads the same on every machine.
/// <c>default</c> is <see cref="Plain"/>.
/// </remarks>
public readonly record struct NumberStyle
{
    private readonly string? decimalMark;
    private readonly string? groupMark;

    private NumberStyle(string sample, string decimalMark, string groupMark)
    {
        Sample = sample;
        this.decimalMark = decimalMark;
        this.groupMark = groupMark;
    }

    /// <summary>1234.56 - as files hold it.</summary>
    public static NumberStyle Plain => default;

    /// <summary>1,234.56</summary>
    public static NumberStyle CommaPoint { get; } = new("1,234.56", ".", ",");

    /// <summary>1.234,56</summary>
    public static NumberStyle PointComma { get; } = new("1.234,56", ",", ".");

    /// <summary>1 234,56</summary>
    public static NumberStyle SpaceComma { get; } = new("1 234,56", ",", " ");

    /// <summary>1'234.56</summary>
    public static NumberStyle ApostrophePoint { get; } = new("1'234.56", ".", "'");

    /// <summary>All styles a household can choose from.</summary>
    public static IReadOnlyList<NumberStyle> All { get; } = [CommaPoint, PointComma, SpaceComma, ApostrophePoint, Plain];

    /// <summary>How 1234.56 looks; also the name of the style in files.</summary>
    public string Sample => field ?? "1234.56";

    /// <summary>The mark before the decimals.</summary>
    public string DecimalMark => decimalMark ?? ".";

    /// <summary>The mark between groups of three digits; may be empty.</summary>
    public string GroupMark => groupMark ?? "";

    /// <summary>Text with numbers such as <c>12.50+3</c>, its points written as this style writes them.</summary>
    public string Written(string plain)
    {
        ArgumentNullException.ThrowIfNull(plain);
        return plain.Replace(".", DecimalMark, StringComparison.Ordinal);
    }
}
