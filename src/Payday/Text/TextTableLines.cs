using System.Collections.Immutable;

namespace Payday.Text;

/// <summary>The lines of a <see cref="TextTable"/>, in parts, so that a page can repeat the header.</summary>
/// <param name="Header">The header and a rule, or nothing.</param>
/// <param name="Rows">One line a row.</param>
/// <param name="Totals">A rule and one line a total, or nothing.</param>
internal sealed record TextTableLines(ImmutableArray<string> Header, ImmutableArray<string> Rows, ImmutableArray<string> Totals)
{
    /// <summary>All lines from top to bottom.</summary>
    public ImmutableArray<string> All => [.. Header, .. Rows, .. Totals];
}
