using System.Collections.Immutable;

namespace Payday.Drawing;

/// <summary>A page as it is printed.</summary>
/// <param name="Width">In whole points, 72 to the inch.</param>
/// <param name="Height">In whole points.</param>
/// <param name="Marks">What is on it; later ones lie over earlier ones.</param>
internal sealed record DrawnPage(int Width, int Height, ImmutableArray<Mark> Marks);
