using System.Globalization;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A whole number.</summary>
/// <param name="least">The least that fits, to say so.</param>
/// <param name="most">The most that fits, to say so.</param>
internal sealed class CountType(int least, int most) : FieldType<int?>
{
    /// <inheritdoc/>
    public override string Show(int? value, SetupFacts facts) => value!.Value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override Result<int?> Take(string text, SetupFacts facts) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            ? Result.Of<int?>(count)
            : Result.Refused<int?>(new TypedFault.NotACount(text, least, most));
}
