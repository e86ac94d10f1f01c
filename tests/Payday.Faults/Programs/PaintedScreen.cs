using System.Globalization;

namespace Payday.Faults.Programs;

/// <summary>What a terminal of 80x24 shows of what was written to it: texts, and a cursor that is put somewhere.</summary>
/// <remarks>All that the program sends besides are colours, modes and questions, which change no text.</remarks>
internal sealed class PaintedScreen
{
    public const int Width = 80;
    public const int Height = 24;
    private const char Escape = '\x1b';

    private readonly char[,] cells = new char[Height, Width];
    private readonly List<char> sequence = [];
    private int row;
    private int column;

    public PaintedScreen() => Clear();

    /// <summary>The lines.</summary>
    public string Text => string.Join('\n', Enumerable.Range(0, Height).Select(at => new string([.. Enumerable.Range(0, Width).Select(x => cells[at, x])]).TrimEnd()));

    /// <summary>Takes what was written; a sequence may be cut anywhere.</summary>
    public void Write(ReadOnlySpan<char> written)
    {
        foreach (char one in written)
        {
            if (sequence.Count > 0)
            {
                sequence.Add(one);
                if (IsWhole())
                {
                    Follow();
                    sequence.Clear();
                }
            }
            else if (one == Escape)
            {
                sequence.Add(one);
            }
            else
            {
                Put(one);
            }
        }
    }

    // ECMA-48: ESC [ up to a letter or the like; ESC ] up to BEL or ESC \; else ESC and one character.
    private bool IsWhole() => sequence.Count >= 2 && sequence[1] switch
    {
        '[' => sequence.Count > 2 && sequence[^1] is >= '@' and <= '~',
        ']' => sequence[^1] == '\a' || (sequence[^1] == '\\' && sequence[^2] == Escape),
        _ => true,
    };

    private void Follow()
    {
        if (sequence[1] != '[')
        {
            return;
        }

        int[] numbers = [.. new string([.. sequence[2..^1]]).TrimStart('?', '>').Split(';').Select(text => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : 0)];
        switch (sequence[^1])
        {
            case 'H':
                row = Math.Clamp(numbers[0] - 1, 0, Height - 1);
                column = Math.Clamp((numbers.Length > 1 ? numbers[1] : 1) - 1, 0, Width - 1);
                break;
            case 'J' when numbers[0] == 2:
                Clear();
                break;
        }
    }

    private void Put(char one)
    {
        switch (one)
        {
            case '\r':
                column = 0;
                break;
            case '\n':
                row = Math.Min(row + 1, Height - 1);
                break;
            case '\b':
                column = Math.Max(column - 1, 0);
                break;
            case >= ' ' when column < Width:
                cells[row, column++] = one;
                break;
        }
    }

    private void Clear()
    {
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i / Width, i % Width] = ' ';
        }
    }
}
