namespace Payday.Screens.Terminals;

/// <summary>Which characters and control sequences of a terminal mean something here (ECMA-48, 5.4; xterm's keys).</summary>
internal static class KnownKeys
{
    private const int LongestNumber = 5;
    private const int HighestKeyNumber = 34;

    /// <summary>Whether a character is one that nobody can press: C1 controls, and code points that are no characters or stand for what could not be read.</summary>
    public static bool IsNone(char one) => one is '\0' or (>= '\u0080' and <= '\u009F') or (>= '\uFDD0' and <= '\uFDEF') or >= '\uFFFD';

    /// <summary>Whether a control sequence is one of a key or an answer of the terminal.</summary>
    /// <param name="text">All of it, from its escape character on.</param>
    /// <param name="final">Its last character.</param>
    /// <remarks>
    /// Keys: arrows, Home, End, F1 to F4, Tab with Shift, those with a number; answers: attributes, cursor, size, modes, keyboard.
    /// Others, also what the mouse did, are of no use here.
    /// </remarks>
    public static bool Has(string text, char final)
    {
        string parameters = text[2..^1];
        bool hasNumbers = parameters.Split(';', ':').All(number => number.TrimStart('?', '>', '=').TrimEnd('$') is { Length: <= LongestNumber } digits && digits.All(char.IsAsciiDigit));
        return hasNumbers && final switch
        {
            '~' => int.TryParse(parameters.Split(';', ':')[0], out int number) && number is > 0 and <= HighestKeyNumber,
            (>= 'A' and <= 'F') or 'H' or (>= 'P' and <= 'S') or 'Z' => true,
            'c' or 'n' or 't' or 'u' or 'y' => parameters.Length > 0,
            _ => false,
        };
    }
}
