using System.Text;

namespace Payday.Screens.Terminals;

/// <summary>Takes out of pasted text what a terminal would obey.</summary>
internal static class PastedText
{
    /// <summary>The text without control characters; tabs and line breaks stay, each break as one line feed.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        foreach (char one in text.Replace("\r\n", "\n", StringComparison.Ordinal))
        {
            if (one == '\r')
            {
                clean.Append('\n');
            }
            else if (one is '\t' or '\n' || !char.IsControl(one))
            {
                clean.Append(one);
            }
        }

        return clean.ToString();
    }
}
