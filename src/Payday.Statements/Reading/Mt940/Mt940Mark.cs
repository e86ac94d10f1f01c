namespace Payday.Statements.Reading.Mt940;

/// <summary>Which way a line goes.</summary>
/// <param name="Sign">1 comes in, -1 goes out.</param>
/// <param name="IsReversal">Whether it undoes another line.</param>
/// <param name="IsExpected">Whether it is only expected (MT942).</param>
/// <param name="Length">How many characters it takes, the currency's letter among them.</param>
internal readonly record struct Mt940Mark(int Sign, bool IsReversal, bool IsExpected, int Length)
{
    /// <summary>The mark at the beginning of a text, or null.</summary>
    /// <remarks>
    /// <c>DR</c> before an amount in euros is a debit with the third letter of the currency; <c>RD</c> is a reversed debit, which
    /// brings money; <c>RC</c> a reversed credit, which takes it.
    /// </remarks>
    public static Mt940Mark? Of(ReadOnlySpan<char> text)
    {
        char first = text.IsEmpty ? ' ' : text[0];
        bool isReversal = first == 'R';
        bool isExpected = first == 'E';
        int at = isReversal || isExpected ? 1 : 0;
        if (at >= text.Length || text[at] is not ('C' or 'D'))
        {
            return null;
        }

        int sign = (text[at] == 'C') != isReversal ? 1 : -1;
        at++;
        at += at < text.Length && char.IsAsciiLetter(text[at]) ? 1 : 0;
        return new Mt940Mark(sign, isReversal, isExpected, at);
    }
}
