using Payday.Core.Faults;

namespace Payday.Store.Json;

/// <summary>One thing that is wrong with a JSON text, for the person who wrote it.</summary>
/// <param name="Place">Where, e.g. <c>bills[2].amount</c>; items count from 0; empty for the text as a whole.</param>
/// <param name="Sentence">What is wrong and how to mend it, one sentence.</param>
/// <param name="Line">The line, from 1; null where there is none to point to.</param>
/// <param name="Column">The column in characters, from 1; only known where the JSON itself is broken.</param>
public sealed record JsonFault(string Place, string Sentence, int? Line = null, int? Column = null)
{
    /// <summary>A fault with its sentence.</summary>
    internal static JsonFault Of(Fault fault, string place = "", int? line = null, int? column = null) => new(place, FileTexts.Of(fault), line, column);

    /// <summary>Place, line and sentence on one line, e.g. <c>bills[2].amount, line 14: …</c></summary>
    public override string ToString()
    {
        string[] where =
        [
            Place,
            Line is { } line ? $"line {line}" : "",
            Column is { } column ? $"column {column}" : "",
        ];
        string prefix = string.Join(", ", where.Where(part => part.Length > 0));
        return prefix.Length == 0 ? Sentence : $"{prefix}: {Sentence}";
    }
}
