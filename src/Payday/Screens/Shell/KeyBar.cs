using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>The last line of a screen: its keys.</summary>
internal static class KeyBar
{
    private const int Most = 7;
    private const int Kept = 3;

    /// <summary>
    /// The keys that have a label, at most seven, as many as fit, the most important first; the last three, the way on, help
    /// and the way back, are always among them, with their words.
    /// </summary>
    public static FrameLine Of(IReadOnlyList<Binding> bindings, int width)
    {
        Binding[] named = [.. bindings.Where(binding => binding.Label.Length > 0)];
        Binding[] last = [.. named.TakeLast(Kept)];
        Binding[] first = [.. named.SkipLast(Kept).Take(Most - last.Length)];
        string[] kept = [.. last.Select(Text)];
        var fitting = new List<string>();
        foreach (string key in first.Select(Text))
        {
            if (Width([.. fitting, key, .. kept]) <= width)
            {
                fitting.Add(key);
            }
        }

        return FrameLine.Of(" " + string.Join("  ", [.. fitting, .. kept]), Ink.Quiet);
    }

    private static string Text(Binding binding) => $"{binding.Name} {binding.Label}";

    private static int Width(IReadOnlyList<string> parts) => 1 + parts.Sum(TextColumns.Width) + (2 * (parts.Count - 1));
}
