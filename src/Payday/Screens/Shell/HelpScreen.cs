using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>The keys and the words of another screen.</summary>
internal sealed class HelpScreen(Screen about) : PageScreen
{
    private const int NameWidth = 12;

    /// <inheritdoc/>
    public override string Title => $"Help: {about.Title}";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys => [ShellKeys.Back];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        foreach (Binding binding in about.Bindings.Append(ShellKeys.Leave))
        {
            string[] help = [.. TextWrap.Lines(binding.Help, width - NameWidth - 2)];
            for (int i = 0; i < help.Length; i++)
            {
                yield return FrameLine.Of($" {TextColumns.PadRight(i == 0 ? binding.Name : "", NameWidth)}{help[i]}");
            }
        }

        foreach ((string word, string meaning) in about.Words)
        {
            yield return FrameLine.Empty;
            foreach (string line in TextWrap.Lines($"{word}: {meaning}", width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }
        }
    }
}
