using System.Drawing;
using Payday.Screens.Frames;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Shell;

/// <summary>The keys and the words of another screen: those it explains itself, then every other word of the program that stands on it.</summary>
internal sealed class HelpScreen(Screen about) : PageScreen
{
    private const int NameWidth = 12;

    private Size size = TextFrame.Complete;

    /// <summary>The screen whose keys and words these are.</summary>
    public Screen About => about;

    /// <inheritdoc/>
    public override string Title => $"Help: {about.Title}";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys => [ShellKeys.Back];

    /// <inheritdoc/>
    public override TextFrame Draw(Size size)
    {
        this.size = size;
        return base.Draw(size);
    }

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

        foreach ((string word, string meaning) in Explained())
        {
            yield return FrameLine.Empty;
            foreach (string line in TextWrap.Lines($"{word}: {meaning}", width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }
        }
    }

    // A word that a line break parts is whole once the lines are joined.
    private IEnumerable<(string Word, string Meaning)> Explained()
    {
        IReadOnlyList<(string Word, string Meaning)> own = about.Words;
        string shown = string.Join(' ', about.Draw(size).Lines.Select(line => line.Text.Trim()));
        return [.. own, .. WordTexts.On(shown, own.Select(word => word.Word)).Select(word => (word.Word, word.Meaning))];
    }
}
