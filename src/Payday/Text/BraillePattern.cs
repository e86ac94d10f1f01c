namespace Payday.Text;

/// <summary>The patterns of dots from which charts are made (Unicode 17, 21.1).</summary>
internal static class BraillePattern
{
    /// <summary>The pattern without a dot.</summary>
    public const char First = '\u2800';

    /// <summary>The pattern with all eight.</summary>
    public const char Last = '\u28FF';

    private const int Upper = 0x01 | 0x08 | 0x02 | 0x10;

    /// <summary>A sign at about the same height: dots above, below, or both.</summary>
    public static char ToAscii(char pattern)
    {
        int dots = pattern - First;
        return (dots & Upper, dots & ~Upper) switch
        {
            (0, 0) => ' ',
            (_, 0) => '\'',
            (0, _) => '.',
            _ => ':',
        };
    }
}
