namespace Payday.Screens.Frames;

/// <summary>What a stretch of text is, from which the look chooses how it shows.</summary>
internal enum Ink
{
    /// <summary>Plain text.</summary>
    Plain,

    /// <summary>Less important.</summary>
    Quiet,

    /// <summary>A title or a total.</summary>
    Strong,

    /// <summary>A line between parts.</summary>
    Rule,

    /// <summary>The row or cell under the cursor.</summary>
    Here,

    /// <summary>Done, or as it should be.</summary>
    Done,

    /// <summary>Needs doing, is missing or was refused; its line begins with !.</summary>
    Alert,

    /// <summary>A figure that the person changed; it begins with *.</summary>
    Changed,

    /// <summary>A bar or a line of a chart.</summary>
    Bar,
}
