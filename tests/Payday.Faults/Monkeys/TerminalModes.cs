using System.Globalization;
using System.Text;

namespace Payday.Faults.Monkeys;

/// <summary>The modes of a terminal as a program's output sets them, and whether that output shows what must never be seen.</summary>
internal sealed class TerminalModes
{
    private const char Escape = '\e';
    private const int CursorShown = 25;
    private const int KeptText = 4000;

    // What a person never sees: a trace of the code, or the runtime's own words at its end.
    private static readonly string[] Traces = ["Unhandled exception", "   at Payday", "   at System.", "   at Terminal", "fault of its own", "Process terminated"];

    private readonly SortedSet<int> on = [CursorShown];
    private readonly StringBuilder sequence = new();
    private readonly StringBuilder text = new();
    private bool hasOtherKeypad;

    /// <summary>What was seen that must never be; null for nothing.</summary>
    public string? Trace { get; private set; }

    /// <summary>The last that was written, without sequences.</summary>
    public string Text => text.ToString();

    /// <summary>What differs from a terminal as a shell expects it; empty for nothing.</summary>
    public string Left => string.Join(", ", on.Where(mode => mode != CursorShown).Select(mode => string.Create(CultureInfo.InvariantCulture, $"mode {mode} on"))
        .Concat(on.Contains(CursorShown) ? [] : ["cursor hidden"])
        .Concat(hasOtherKeypad ? ["other keypad"] : []));

    /// <summary>Takes what was written; it may be cut anywhere.</summary>
    public void Write(ReadOnlySpan<byte> written)
    {
        foreach (byte one in written)
        {
            Write((char)one);
        }

        if (text.Length > KeptText * 2)
        {
            text.Remove(0, text.Length - KeptText);
        }

        string seen = text.ToString();
        Trace ??= Traces.FirstOrDefault(trace => seen.Contains(trace, StringComparison.Ordinal));
    }

    private void Write(char one)
    {
        if (sequence.Length == 0 && one != Escape)
        {
            text.Append(one);
            return;
        }

        sequence.Append(one);
        if (sequence.Length < 2)
        {
            return;
        }

        bool isWhole = sequence[1] switch
        {
            '[' => sequence.Length > 2 && one is >= '@' and <= '~',
            ']' or 'P' or '_' => one == '\a' || (one == '\\' && sequence[^2] == Escape),
            _ => true,
        };
        if (isWhole)
        {
            Follow(sequence.ToString());
            sequence.Clear();
        }
    }

    private void Follow(string whole)
    {
        if (whole is "\e=" or "\e>")
        {
            hasOtherKeypad = whole == "\e=";
        }
        else if (whole.StartsWith("\e[?", StringComparison.Ordinal) && whole[^1] is 'h' or 'l')
        {
            foreach (string number in whole[3..^1].Split(';'))
            {
                if (int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int mode))
                {
                    _ = whole[^1] == 'h' ? on.Add(mode) : on.Remove(mode);
                }
            }
        }
    }
}
