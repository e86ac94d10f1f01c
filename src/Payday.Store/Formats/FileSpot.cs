using System.Collections.Immutable;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>Where a place of a draft stands in a file.</summary>
/// <param name="Places">The place as a file's faults name it, then those around it, up to the outermost.</param>
/// <param name="Wanted">What belongs there.</param>
internal sealed record FileSpot(ImmutableArray<string> Places, FileWanted Wanted)
{
    /// <summary>The file as a whole.</summary>
    public static FileSpot Whole { get; } = new([""], new FileWanted.Object());

    /// <summary>The place as a file's faults name it.</summary>
    public string Place => Places[0];

    /// <summary>A place inside this one.</summary>
    public FileSpot In(string place, FileWanted wanted) => new([place, .. Places], wanted);
}
