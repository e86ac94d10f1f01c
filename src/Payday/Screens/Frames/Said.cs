using Payday.Text;

namespace Payday.Screens.Frames;

/// <summary>A paragraph, and how it shows.</summary>
/// <param name="Text">What is said, clean; empty for an empty line.</param>
/// <param name="Ink">What kind of text it is.</param>
internal readonly record struct Said(string Text, Ink Ink)
{
    /// <summary>What is said plainly.</summary>
    public static implicit operator Said(string text) => new(text, Ink.Plain);

    /// <summary>What is in the way or must not be missed; marked for who sees no ink.</summary>
    public static Said Alert(string text) => new("! " + text, Ink.Alert);

    /// <summary>What is said beside the rest.</summary>
    public static Said Quiet(string text) => new(text, Ink.Quiet);

    /// <summary>The lines of paragraphs, a column from the left.</summary>
    /// <param name="paragraphs">The paragraphs.</param>
    /// <param name="width">The width of the screen, in columns.</param>
    public static IEnumerable<FrameLine> Lines(IEnumerable<Said> paragraphs, int width) => paragraphs.SelectMany(said =>
        (said.Text.Length == 0 ? [""] : TextWrap.Lines(said.Text, width - 2)).Select(line => FrameLine.Of(" " + line, said.Ink)));
}
