namespace Payday.Statements.Texts;

/// <summary>The line of a text that a place in it is on, asked for places in rising order.</summary>
internal sealed class LinePlaces(string text)
{
    private int place;
    private int line = 1;

    /// <summary>The line of a place, from 1. CR, LF and both together end a line.</summary>
    public int At(int at)
    {
        for (; place < at; place++)
        {
            bool ends = text[place] == '\n' || (text[place] == '\r' && (place + 1 >= text.Length || text[place + 1] != '\n'));
            line += ends ? 1 : 0;
        }

        return line;
    }
}
