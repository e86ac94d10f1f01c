using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Start;

/// <summary>All that is wrong, a sentence each.</summary>
internal sealed class FaultsScreen(string title, IReadOnlyList<string> faults) : PageScreen
{
    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width) => faults
        .SelectMany(fault => TextWrap.Lines("! " + CleanText.OneLine(fault), width - 2))
        .Select(line => FrameLine.Of(" " + line));
}
