namespace Payday.Screens.Shell;

/// <summary>Which characters a terminal has.</summary>
internal enum TerminalSigns
{
    /// <summary>All that are written here.</summary>
    All,

    /// <summary>Those of a console's font of 256 or 512: lines and whole blocks, but no eighths and no patterns of dots.</summary>
    Console,

    /// <summary>ASCII.</summary>
    Ascii,
}
