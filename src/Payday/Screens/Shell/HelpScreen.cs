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
        foreach ((string heading, Binding[] keys) in Groups())
        {
            yield return FrameLine.Headed(width, heading);
            foreach (FrameLine line in keys.SelectMany(key => Of(key, width)))
            {
                yield return line;
            }
        }

        (string Word, string Meaning)[] words = [.. Explained()];
        if (words.Length > 0)
        {
            yield return FrameLine.Headed(width, "Words");
        }

        for (int i = 0; i < words.Length; i++)
        {
            foreach (string line in TextWrap.Lines($"{words[i].Word}: {words[i].Meaning}", width - 2))
            {
                yield return FrameLine.Of(" " + line);
            }

            if (i < words.Length - 1)
            {
                yield return FrameLine.Empty;
            }
        }
    }

    // What the screen does first: those are the keys that differ from screen to screen.
    private IEnumerable<(string Heading, Binding[] Keys)> Groups() => about.Bindings.Append(ShellKeys.Leave)
        .GroupBy(GroupOf)
        .OrderBy(group => group.Key)
        .Select(group => (group.Key switch { Group.Here => "This screen", Group.Moving => "Moving", _ => "Everywhere" }, group.ToArray()));

    private static Group GroupOf(Binding key) => key.Name switch
    {
        "Up" or "Down" or "PgUp" or "PgDn" or "Home" or "End" => Group.Moving,
        _ => key.Name == ShellKeys.Back.Name || key.Name == ShellKeys.Leave.Name || key.Letter == Letters.Help ? Group.Everywhere : Group.Here,
    };

    private static IEnumerable<FrameLine> Of(Binding binding, int width)
    {
        string[] help = [.. TextWrap.Lines(binding.Help, width - NameWidth - 2)];
        return help.Select((line, i) => FrameLine.Of($" {TextColumns.PadRight(i == 0 ? binding.Name : "", NameWidth)}{line}"));
    }

    private enum Group
    {
        Here,
        Moving,
        Everywhere,
    }

    // A word that a line break parts is whole once the lines are joined.
    private IEnumerable<(string Word, string Meaning)> Explained()
    {
        IReadOnlyList<(string Word, string Meaning)> own = about.Words;
        string shown = string.Join(' ', about.Draw(size).Lines.Select(line => line.Text.Trim()));
        return [.. own, .. WordTexts.On(shown, own.Select(word => word.Word)).Select(word => (word.Word, word.Meaning))];
    }
}
