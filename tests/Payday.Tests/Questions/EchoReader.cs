namespace Payday.Tests.Questions;

/// <summary>Lines that are typed, each shown as it is, as a terminal shows it.</summary>
/// <param name="lines">The lines.</param>
/// <param name="echo">Where they show; null for nowhere.</param>
internal sealed class EchoReader(IReadOnlyList<string> lines, TextWriter? echo) : TextReader
{
    private int line;
    private int at;

    public override int Read()
    {
        if (line == lines.Count)
        {
            return -1;
        }

        if (at == 0)
        {
            echo?.WriteLine("< " + lines[line]);
        }

        if (at < lines[line].Length)
        {
            return lines[line][at++];
        }

        line++;
        at = 0;
        return '\n';
    }
}
