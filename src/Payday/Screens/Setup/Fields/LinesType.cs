using System.Collections.Immutable;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A few lines of text with a bar between them.</summary>
internal sealed class LinesType : FieldType<ImmutableArray<string>?>
{
    /// <inheritdoc/>
    public override int MostTyped => Shell.CellEdit.Long;

    /// <inheritdoc/>
    public override string Show(ImmutableArray<string>? value, SetupFacts facts) => string.Join(" | ", value!.Value);

    /// <inheritdoc/>
    public override Result<ImmutableArray<string>?> Take(string text, SetupFacts facts) =>
        Result.Of<ImmutableArray<string>?>([.. text.Split('|', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]);
}
