using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Store.Json;

/// <summary>Collects the faults of one reading.</summary>
internal sealed class JsonFaultLog
{
    // A file that is wrong all over is told so instead of filling the memory with its faults.
    private const int Most = 1_000;

    private readonly List<(IReadOnlyList<string> Places, Fault Fault)> faults = [];
    private readonly HashSet<string> refused = new(StringComparer.Ordinal);
    private readonly HashSet<string> unsound = new(StringComparer.Ordinal);

    public bool IsEmpty => faults.Count == 0;

    /// <summary>Notes a fault at a place of the text.</summary>
    public void Add(string place, Fault fault)
    {
        refused.Add(place);
        Add([place], fault);
    }

    /// <summary>Notes that something is missing.</summary>
    /// <param name="places">Where, then what it is missing from.</param>
    /// <param name="fault">What is wrong.</param>
    public void AddMissing(IReadOnlyList<string> places, Fault fault)
    {
        refused.Add(places[0]);
        Add(places, fault);
    }

    /// <summary>Notes that a place has a fault, or something inside it.</summary>
    public void IsUnsound(string place) => unsound.Add(place);

    /// <summary>
    /// Notes what a check found: not where the value itself, something inside it or what it stands in could not be read,
    /// for then it isn't known what the check would have seen.
    /// </summary>
    /// <param name="places">The place, then those around it, up to the outermost.</param>
    /// <param name="fault">What is wrong.</param>
    public void AddChecked(IReadOnlyList<string> places, Fault fault)
    {
        bool isWhole = places.Count == 1;
        if ((isWhole || !unsound.Contains(places[0])) && !places.Any(refused.Contains))
        {
            Add(places, fault);
        }
    }

    /// <summary>The faults with their lines, in the order of the lines.</summary>
    public ImmutableArray<JsonFault> Located(ReadOnlySpan<byte> utf8)
    {
        // What is missing has no line: that of what it is missing from is where a person looks.
        Dictionary<string, int> lines = JsonLines.Of(utf8, [.. faults.SelectMany(entry => entry.Places)]);
        IEnumerable<JsonFault> located = faults
            .Select(entry => new JsonFault(entry.Places[0], FileTexts.Of(entry.Fault), Line(entry.Places, lines)))
            .OrderBy(fault => fault.Line ?? int.MaxValue);
        return faults.Count < Most ? [.. located] : [.. located, JsonFault.Of(new FileFault.More(Most))];
    }

    private void Add(IReadOnlyList<string> places, Fault fault)
    {
        if (faults.Count < Most)
        {
            faults.Add((places, fault));
        }
    }

    private static int? Line(IReadOnlyList<string> places, Dictionary<string, int> lines)
    {
        foreach (string place in places)
        {
            if (lines.TryGetValue(place, out int line))
            {
                return line;
            }
        }

        return null;
    }
}
