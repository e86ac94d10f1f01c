using Payday.Text;

namespace Payday.Questions;

/// <summary>Sentences in plain lines, for a screen reader or a terminal that can't move its cursor.</summary>
/// <param name="writer">Where they go.</param>
internal sealed class SpokenOutput(TextWriter writer)
{
    // One less than the usual 80: some terminals break a line that is as long as they are wide.
    private const int Width = 79;

    /// <summary>Whether nothing can be said any more, as the terminal or the disk behind it is gone: then nothing is asked either.</summary>
    public bool IsLost { get; private set; }

    /// <summary>Says some sentences; nothing for an empty one.</summary>
    public void Say(params IEnumerable<string> sentences)
    {
        // Worked out before anything is written: only what the writer refuses means that it is lost.
        string[] lines = [.. sentences.SelectMany(sentence => TextWrap.Lines(CleanText.OneLine(sentence), Width))];
        if (IsLost)
        {
            return;
        }

        try
        {
            foreach (string line in lines)
            {
                writer.WriteLine(line);
            }

            writer.Flush();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            IsLost = true;
        }
    }
}
