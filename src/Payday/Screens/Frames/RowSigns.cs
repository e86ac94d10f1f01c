namespace Payday.Screens.Frames;

/// <summary>Signs before a row or a step, a column wide each.</summary>
internal static class RowSigns
{
    /// <summary>Done: a check mark, and the letter v where a terminal has none.</summary>
    public const char Done = '\u2713';
}
