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

    /// <summary>The row or cell under the cursor.</summary>
    Here,

    /// <summary>Done.</summary>
    Done,

    /// <summary>Needs doing, is missing or was refused; its line begins with !.</summary>
    Alert,
}
