using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A line of text.</summary>
internal sealed class LineType : FieldType<string?>
{
    /// <inheritdoc/>
    public override string Show(string? value, SetupFacts facts) => value!;

    /// <inheritdoc/>
    public override Result<string?> Take(string text, SetupFacts facts) => Result.Of<string?>(text.Trim());
}
