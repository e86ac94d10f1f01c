namespace Payday.Text;

/// <summary>How the cells of a column stand.</summary>
internal enum Align
{
    /// <summary>From the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>With their decimal marks under each other; cells without one end where the mark would stand.</summary>
    Decimal,
}

/// <summary>A column of a <see cref="TextTable"/>.</summary>
/// <param name="Header">The text above it; empty for none.</param>
/// <param name="Align">How its cells stand; the header stands left or right like them.</param>
internal sealed record TextColumn(string Header, Align Align = Align.Left)
{
    /// <summary>The fewest columns it takes, zero or more.</summary>
    public int MinWidth { get; init; }

    /// <summary>Whether its cells may be cut, down to <see cref="MinWidth"/>, when the table is too wide; of several the widest is cut first.</summary>
    public bool Shrinks { get; init; }

    /// <summary>Above zero where it may be left out when the table is too wide all the same; the highest goes first.</summary>
    public int Drops { get; init; }

    /// <summary>Whether it takes up what the table is narrower than the given width.</summary>
    public bool Grows { get; init; }
}
