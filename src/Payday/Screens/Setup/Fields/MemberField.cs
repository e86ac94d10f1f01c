using System.Collections.Immutable;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A field that holds a member of a draft.</summary>
/// <typeparam name="TPart">The part of the draft that the form is of.</typeparam>
/// <typeparam name="TValue">What the member holds; null where it is missing.</typeparam>
/// <param name="Path">The way to the member.</param>
/// <param name="Type">What it holds.</param>
internal sealed record MemberField<TPart, TValue>(DraftPath<TPart, TValue> Path, FieldType<TValue> Type) : SetupField<TPart>
{
    /// <summary>What it holds when it is emptied.</summary>
    public TValue? Nothing { get; init; }

    /// <summary>Whether a choice makes sense for the part, going by its other fields.</summary>
    public Func<TPart, TValue, bool> Offers { get; init; } = (_, _) => true;

    /// <inheritdoc/>
    public override int MostTyped => Type.MostTyped;

    /// <inheritdoc/>
    public override bool IsEmpty(TPart part, SetupFacts facts) => Path.Get(part) is null;

    /// <inheritdoc/>
    public override string Show(TPart part, SetupFacts facts) => Path.Get(part) is { } value ? Type.Show(value, facts) : "";

    /// <inheritdoc/>
    public override string Typed(TPart part, SetupFacts facts) => Path.Get(part) is { } value ? Type.Typed(value, facts) : "";

    /// <inheritdoc/>
    public override Result<TPart> Take(TPart part, string text, SetupFacts facts) => Type.Take(text, facts).Map(value => Path.Set(part, value));

    /// <inheritdoc/>
    public override TPart Cleared(TPart part) => Path.Set(part, Nothing!);

    /// <inheritdoc/>
    public override ImmutableArray<string> Choices(TPart part, SetupFacts facts) => [.. Offered(part, facts).Select(choice => choice.Label)];

    /// <inheritdoc/>
    public override int Chosen(TPart part, SetupFacts facts) =>
        Offered(part, facts).ToList().FindIndex(choice => EqualityComparer<TValue>.Default.Equals(choice.Value, Path.Get(part)));

    /// <inheritdoc/>
    public override TPart Choose(TPart part, int choice, SetupFacts facts) => Path.Set(part, Offered(part, facts)[choice].Value);

    /// <inheritdoc/>
    public override bool IsSame(TPart one, TPart other) => EqualityComparer<TValue>.Default.Equals(Path.Get(one), Path.Get(other));

    private ImmutableArray<Choice<TValue>> Offered(TPart part, SetupFacts facts) => [.. Type.Choices(facts).Where(choice => Offers(part, choice.Value))];
}
