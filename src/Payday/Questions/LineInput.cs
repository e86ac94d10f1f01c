using System.Text;

namespace Payday.Questions;

/// <summary>Answers, a line each.</summary>
/// <param name="reader">Where they come from.</param>
internal sealed class LineInput(TextReader reader)
{
    /// <summary>The most characters that an answer can have.</summary>
    public const int Most = 1000;

    /// <summary>Whether something came in that is no text: what comes after it can't be told from it, so it is the end of input.</summary>
    public bool IsNoText { get; private set; }

    /// <summary>The next answer, without blanks around it; null at the end of input.</summary>
    /// <returns>What is longer than <see cref="Most"/> is read to its end and cut one character after it, so that no memory is spent on it.</returns>
    public string? Read()
    {
        try
        {
            return IsNoText ? null : Line();
        }
        catch (DecoderFallbackException)
        {
            IsNoText = true;
            return null;
        }
    }

    private string? Line()
    {
        var line = new StringBuilder();
        int read = reader.Read();
        if (read < 0)
        {
            return null;
        }

        for (; read >= 0 && read != '\n'; read = reader.Read())
        {
            if (line.Length <= Most)
            {
                line.Append((char)read);
            }
        }

        return line.Length > Most ? line.ToString() : line.ToString().Trim();
    }
}
