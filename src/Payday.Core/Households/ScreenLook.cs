namespace Payday.Core.Households;

/// <summary>How the full screen shows.</summary>
public enum ScreenLook
{
    /// <summary>By the terminal's background where it says it, else without colours.</summary>
    Automatic,

    /// <summary>Colours for a dark background.</summary>
    Dark,

    /// <summary>Colours for a light background.</summary>
    Light,

    /// <summary>White and yellow on black.</summary>
    HighContrast,

    /// <summary>No colours, and only the characters of ASCII.</summary>
    Plain,
}
