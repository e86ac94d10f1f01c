using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>One of a few values.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <param name="choices">The values, for the household as it stands.</param>
internal sealed class ChoiceType<T>(Func<SetupFacts, ImmutableArray<Choice<T>>> choices) : FieldType<T>
{
    /// <inheritdoc/>
    public override ImmutableArray<Choice<T>> Choices(SetupFacts facts) => choices(facts);

    /// <inheritdoc/>
    public override string Show(T value, SetupFacts facts) =>
        Choices(facts).FirstOrDefault(choice => EqualityComparer<T>.Default.Equals(choice.Value, value))?.Label ?? value!.ToString()!;

    /// <inheritdoc/>
    public override Result<T> Take(string text, SetupFacts facts) =>
        Choices(facts).FirstOrDefault(choice => string.Equals(choice.Label, text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } chosen
            ? Result.Of(chosen.Value)
            : Result.Refused<T>(new TypedFault.NotAChoice(text, [.. Choices(facts).Select(choice => choice.Label)]));
}
