using System.Collections.Immutable;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Learning;

/// <summary>All that is said of a file of the bank.</summary>
internal sealed class FileSaysScreen(string name, ImmutableArray<string> sentences) : PageScreen
{
    /// <inheritdoc/>
    public override string Title => CleanText.OneLine(name);

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => Said.Lines(sentences.Select(text => (Said)CleanText.OneLine(text)), width);
}
