using System.Collections.Immutable;

namespace Payday.Texts;

/// <summary>The names nearest to one that isn't known, to be offered and never taken: what was meant is for the person to say.</summary>
/// <param name="Meant">The names of which the written one may be a misspelling; empty where there is none.</param>
/// <param name="Near">The nearest names, those that share the most pairs of neighbouring letters first.</param>
/// <param name="AreAll">Whether those are all that there are.</param>
internal sealed record NearNames(ImmutableArray<string> Meant, ImmutableArray<string> Near, bool AreAll)
{
    private const int MostNamed = 5;

    /// <summary>Whether both offer the same names in the same order.</summary>
    public bool Equals(NearNames? other) => other is not null && AreAll == other.AreAll && Meant.SequenceEqual(other.Meant) && Near.SequenceEqual(other.Near);

    /// <summary>In line with <see cref="Equals(NearNames)"/>.</summary>
    public override int GetHashCode() => HashCode.Combine(Meant.Length, Near.Length, AreAll);

    /// <summary>Those of some names that are nearest to another.</summary>
    public static NearNames Of(IEnumerable<string> known, string name)
    {
        string[] names = [.. known.Distinct()];
        ImmutableArray<string> near = [.. names.OrderByDescending(one => Likeness(one, name)).Take(MostNamed)];
        return new([.. Misspelling.Near(name, names)], near, near.Length == names.Length);
    }

    /// <summary>A sentence that offers them.</summary>
    public string Said() => this switch
    {
        { Meant.IsEmpty: false } => Misspelling.Said(Meant),
        { Near.IsEmpty: true } => "There are none.",
        { AreAll: true } => $"There {(Near.Length == 1 ? "is" : "are")} {Quoted}.",
        _ => $"The nearest are {Quoted}.",
    };

    private string Quoted => string.Join("; ", Near.Select(name => $"\"{name}\""));

    private static int Likeness(string known, string name)
    {
        HashSet<string> pairs = [.. Pairs(name)];
        return Pairs(known).Distinct().Count(pairs.Contains);

        static IEnumerable<string> Pairs(string text) => text.ToUpperInvariant().Zip(text.ToUpperInvariant().Skip(1), (first, second) => $"{first}{second}");
    }
}
