using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>The last line of a screen: its keys.</summary>
internal static class KeyBar
{
    private const int Most = 7;
    private const int Kept = 3;
    private const string Help = "?";

    /// <summary>
    /// The keys that have a label, at most seven, as many as fit, the most important first; the last three, the way on, help
    /// and the way back, are always among them. Where not all fit, the help key goes without its word.
    /// </summary>
    public static FrameLine Of(IReadOnlyList<Binding> bindings, int width)
    {
        Binding[] named = [.. bindings.Where(binding => binding.Label.Length > 0)];
        Binding[] last = [.. named.TakeLast(Kept)];
        Binding[] first = [.. named.SkipLast(Kept).Take(Most - last.Length)];
        string[] all = [.. first.Concat(last).Select(binding => Text(binding, isShort: false))];
        return FrameLine.Of(" " + string.Join("  ", Width(all) <= width ? all : Fitting(first, last, width)), Ink.Quiet);
    }

    private static List<string> Fitting(Binding[] first, Binding[] last, int width)
    {
        string[] kept = [.. last.Select(binding => Text(binding, isShort: true))];
        var fitting = new List<string>();
        foreach (string key in first.Select(binding => Text(binding, isShort: true)))
        {
            if (Width([.. fitting, key, .. kept]) <= width)
            {
                fitting.Add(key);
            }
        }

        return [.. fitting, .. kept];
    }

    private static string Text(Binding binding, bool isShort) =>
        isShort && binding.Name == Help ? Help : $"{binding.Name} {binding.Label}";

    private static int Width(IReadOnlyList<string> parts) => 1 + parts.Sum(TextColumns.Width) + (2 * (parts.Count - 1));
}
