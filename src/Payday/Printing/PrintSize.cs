namespace Payday.Printing;

/// <summary>How large the print on paper is.</summary>
internal enum PrintSize
{
    /// <summary>As large as fits, up to 14 points.</summary>
    Usual,

    /// <summary>From 16 points up, in bold type where the font is a thin one.</summary>
    Large,
}
