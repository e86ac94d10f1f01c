using System.Collections.Concurrent;
using System.Text;

namespace Payday.Journeys;

/// <summary>What a tmux client in control mode says: an answer to each command, and between them that the window has written something.</summary>
internal sealed class TmuxAnswers
{
    // What changes without the window writing (a process that ended, a flag of the terminal) is looked at again after this long.
    private static readonly TimeSpan AtLeast = TimeSpan.FromMilliseconds(100);

    private readonly BlockingCollection<(bool Fine, string Said)> answers = [];
    private readonly object more = new();
    private long written;

    /// <param name="output">The client's output, which is read to its end.</param>
    public TmuxAnswers(TextReader output) => new Thread(() => Read(output)) { IsBackground = true, Name = "tmux" }.Start();

    /// <summary>How often the window has written something so far.</summary>
    public long Written => Interlocked.Read(ref written);

    /// <summary>The answer to the command that was given last.</summary>
    public string Next()
    {
        (bool fine, string said) = answers.Take();
        return fine ? said : throw new InvalidOperationException("tmux: " + said);
    }

    /// <summary>Waits until the window has written more, or for a moment.</summary>
    /// <param name="than">How often it had.</param>
    /// <returns>Whether it has written more.</returns>
    public bool WaitForMore(long than)
    {
        lock (more)
        {
            return Written != than || Monitor.Wait(more, AtLeast);
        }
    }

    private void Read(TextReader output)
    {
        string? end = null;
        var said = new StringBuilder();
        while (output.ReadLine() is { } line)
        {
            // "%begin TIME NUMBER FLAGS", the answer, "%end TIME NUMBER FLAGS" or "%error TIME NUMBER FLAGS".
            if (end is null)
            {
                if (line.StartsWith("%begin ", StringComparison.Ordinal))
                {
                    end = line["%begin ".Length..];
                }
                else if (line.StartsWith("%output ", StringComparison.Ordinal))
                {
                    lock (more)
                    {
                        Interlocked.Increment(ref written);
                        Monitor.PulseAll(more);
                    }
                }
            }
            else if (line == "%end " + end || line == "%error " + end)
            {
                answers.Add((line[1] == 'e' && line[2] == 'n', said.ToString()));
                end = null;
                said.Clear();
            }
            else
            {
                said.Append(line).Append('\n');
            }
        }

        answers.Add((false, "it has ended"));
    }
}
