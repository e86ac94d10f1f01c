namespace Payday.Screens.Shell;

/// <summary>What a terminal's background is, as far as it is known.</summary>
internal enum Background
{
    /// <summary>The terminal doesn't say, or it is neither.</summary>
    Unknown,

    /// <summary>So dark that the colours for it read on it.</summary>
    Dark,

    /// <summary>So light that the colours for it read on it.</summary>
    Light,
}
