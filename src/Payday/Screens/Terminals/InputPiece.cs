namespace Payday.Screens.Terminals;

/// <summary>A whole piece of what a terminal sends. One of the nested cases.</summary>
internal abstract record InputPiece
{
    private InputPiece()
    {
    }

    /// <summary>A character that was typed, or a control character that stands for a key.</summary>
    /// <param name="Value">The character; a surrogate is followed by its other half.</param>
    public sealed record Typed(char Value) : InputPiece;

    /// <summary>The Esc key by itself.</summary>
    public sealed record Escape : InputPiece;

    /// <summary>A whole control sequence of a kind that is known: a key, or an answer of the terminal.</summary>
    /// <param name="Text">All of it, from its escape character on.</param>
    public sealed record Sequence(string Text) : InputPiece;

    /// <summary>A paste.</summary>
    /// <param name="Text">What was pasted, at most one character more than <see cref="InputReader.MostPasted"/>, which says that there was more.</param>
    public sealed record Paste(string Text) : InputPiece;
}
