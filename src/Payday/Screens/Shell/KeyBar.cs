using Payday.Screens.Frames;
using Payday.Text;

namespace Payday.Screens.Shell;

/// <summary>The last line of a screen: its keys.</summary>
internal static class KeyBar
{
    private const int Most = 7;
    private const int Kept = 3;

    /// <summary>The keys that have a label, at most seven, as many as fit; the last three, the way on, help and the way back, are always among them.</summary>
    public static FrameLine Of(IReadOnlyList<Binding> bindings, int width)
    {
        string[] all = [.. bindings.Where(binding => binding.Label.Length > 0).Select(binding => $"{binding.Name} {binding.Label}")];
        string[] last = [.. all.TakeLast(Kept)];
        string[] first = [.. all.SkipLast(Kept).Take(Most - last.Length)];
        while (first.Length > 0 && Width([.. first, .. last]) > width)
        {
            first = first[..^1];
        }

        return FrameLine.Of(" " + string.Join("  ", first.Concat(last)), Ink.Quiet);
    }

    private static int Width(string[] parts) => 1 + parts.Sum(TextColumns.Width) + (2 * (parts.Length - 1));
}
