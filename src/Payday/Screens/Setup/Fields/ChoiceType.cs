using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>One of a few values.</summary>
/// <param name="choices">The values, for the household as it stands.</param>
internal sealed class ChoiceType(Func<SetupWork, ImmutableArray<Choice>> choices) : FieldType
{
    /// <summary>Words of the household file, each with what the person reads.</summary>
    public static ChoiceType Of(params (string Word, string Label)[] words)
    {
        ImmutableArray<Choice> all = [.. words.Select(word => new Choice(word.Label, Text(word.Word)))];
        return new ChoiceType(_ => all);
    }

    /// <summary>Yes or no.</summary>
    public static ChoiceType YesNo() => new(_ => [new("yes", JsonValue.Create(true)), new("no", JsonValue.Create(false))]);

    /// <summary>A note in use, or none of them.</summary>
    /// <param name="none">What the person reads where there is none.</param>
    public static ChoiceType Note(string none) => new(work =>
        [new(none, null), .. work.Notes.Select(note => new Choice(PiecesType.Shown(note, work), Text(note)))]);

    /// <inheritdoc/>
    public override ImmutableArray<Choice> Choices(SetupWork work) => choices(work);

    /// <inheritdoc/>
    public override string Show(JsonNode value, SetupWork work) =>
        Choices(work).FirstOrDefault(choice => JsonNode.DeepEquals(choice.Value, value))?.Label ?? value.ToString();

    /// <inheritdoc/>
    public override Result<JsonNode> Take(string text, SetupWork work) =>
        Choices(work).FirstOrDefault(choice => string.Equals(choice.Label, text.Trim(), StringComparison.OrdinalIgnoreCase))?.Value is { } value
            ? Result.Of(value.DeepClone())
            : Result.Refused<JsonNode>($"'{Shown(text)}' is none of {string.Join(" / ", Choices(work).Select(choice => choice.Label))}.");
}
