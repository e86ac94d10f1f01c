using Payday.Text;

namespace Payday.Questions;

/// <summary>Sentences in plain lines, for a screen reader or a terminal that can't move its cursor.</summary>
/// <param name="writer">Where they go.</param>
internal sealed class SpokenOutput(TextWriter writer)
{
    // One less than the usual 80: some terminals break a line that is as long as they are wide.
    private const int Width = 79;

    /// <summary>Says some sentences; nothing for an empty one.</summary>
    public void Say(params IEnumerable<string> sentences)
    {
        foreach (string line in sentences.SelectMany(sentence => TextWrap.Lines(CleanText.OneLine(sentence), Width)))
        {
            writer.WriteLine(line);
        }

        writer.Flush();
    }
}
