using System.Collections.Immutable;

namespace Payday.Store.Json;

/// <summary>Collects the faults of one reading.</summary>
internal sealed class JsonFaultLog
{
    // A file that is wrong all over is told so instead of filling the memory with its faults.
    private const int Most = 1_000;

    private readonly List<(JsonFault Fault, string Anchor)> faults = [];

    public bool IsEmpty => faults.Count == 0;

    /// <summary>Notes a fault.</summary>
    /// <param name="place">Where the fault is.</param>
    /// <param name="anchor">A place that is in the text, to take the line from: for a missing field, its object.</param>
    /// <param name="sentence">What is wrong and how to mend it.</param>
    public void Add(string place, string anchor, string sentence)
    {
        if (faults.Count < Most)
        {
            faults.Add((new JsonFault(place, sentence), anchor));
        }
    }

    /// <summary>The faults with their lines, in the order of the lines.</summary>
    public ImmutableArray<JsonFault> Located(ReadOnlySpan<byte> utf8)
    {
        Dictionary<string, int> lines = JsonLines.Of(utf8, [.. faults.Select(entry => entry.Anchor)]);
        IEnumerable<JsonFault> located = faults
            .Select(entry => lines.TryGetValue(entry.Anchor, out int line) ? entry.Fault with { Line = line } : entry.Fault)
            .OrderBy(fault => fault.Line ?? int.MaxValue);
        return faults.Count < Most
            ? [.. located]
            : [.. located, new JsonFault("", "There may be more; only the first 1,000 faults are listed.")];
    }
}
