using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A field that is only read: a figure that comes from elsewhere.</summary>
/// <param name="Shows">What it shows; empty for nothing.</param>
internal sealed record ReadField<TPart>(Func<TPart, SetupFacts, string> Shows) : SetupField<TPart>
{
    /// <inheritdoc/>
    public override int MostTyped => 0;

    /// <inheritdoc/>
    public override bool IsEmpty(TPart part, SetupFacts facts) => Shows(part, facts).Length == 0;

    /// <inheritdoc/>
    public override string Show(TPart part, SetupFacts facts) => Shows(part, facts);

    /// <inheritdoc/>
    public override string Typed(TPart part, SetupFacts facts) => Shows(part, facts);

    /// <inheritdoc/>
    public override Result<TPart> Take(TPart part, string text, SetupFacts facts) => Result.Of(part);

    /// <inheritdoc/>
    public override TPart Cleared(TPart part) => part;

    /// <inheritdoc/>
    public override ImmutableArray<string> Choices(TPart part, SetupFacts facts) => [];

    /// <inheritdoc/>
    public override int Chosen(TPart part, SetupFacts facts) => -1;

    /// <inheritdoc/>
    public override TPart Choose(TPart part, int choice, SetupFacts facts) => part;

    /// <inheritdoc/>
    public override bool IsSame(TPart one, TPart other) => true;
}
