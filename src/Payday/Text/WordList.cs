using Humanizer;

namespace Payday.Text;

/// <summary>Several things in one sentence.</summary>
internal static class WordList
{
    /// <summary>E.g. <c>Food, Fares and Fuel</c>: without a culture of the machine the library writes an ampersand.</summary>
    public static string InWords(this IEnumerable<string> parts) => parts.Humanize("and");
}
