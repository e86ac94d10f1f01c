using System.Collections.Immutable;

namespace Payday.Screens.Setup.Fields;

/// <summary>Makes fields of a few values.</summary>
internal static class ChoiceTypes
{
    /// <summary>Values that are always the same, each with what the person reads.</summary>
    public static ChoiceType<T?> Of<T>(params (T Value, string Label)[] choices)
        where T : struct
    {
        ImmutableArray<Choice<T?>> all = [.. choices.Select(choice => new Choice<T?>(choice.Label, choice.Value))];
        return new ChoiceType<T?>(_ => all);
    }

    /// <summary>One value, or nothing at all.</summary>
    /// <param name="none">What the person reads where there is nothing.</param>
    /// <param name="value">The value.</param>
    /// <param name="label">What the person reads where there is that.</param>
    public static ChoiceType<bool?> OneOrNone(string none, bool value, string label)
    {
        ImmutableArray<Choice<bool?>> all = [new(none, null), new(label, value)];
        return new ChoiceType<bool?>(_ => all);
    }

    /// <summary>A note in use, or none of them.</summary>
    /// <param name="none">What the person reads where there is none.</param>
    public static ChoiceType<decimal?> Note(string none) => new(facts =>
        [new(none, null), .. facts.Notes.Select(note => new Choice<decimal?>(PiecesType.Shown(note, facts), note))]);
}
