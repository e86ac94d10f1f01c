using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>A currency by its code.</summary>
internal sealed class CurrencyType : FieldType<Currency?>
{
    /// <inheritdoc/>
    public override string Show(Currency? value, SetupFacts facts) => value!.Value.Code;

    /// <inheritdoc/>
    public override Result<Currency?> Take(string text, SetupFacts facts) =>
        Currency.TryFromCode(text.Trim().ToUpperInvariant(), out Currency currency) && currency != default
            ? Result.Of<Currency?>(currency)
            : Result.Refused<Currency?>(new TypedFault.NotACode(text));
}
