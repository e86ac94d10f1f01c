using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Screens.Setup.Fields;

/// <summary>An amount in the household's currency; a sum such as 12.50+3 is taken.</summary>
internal sealed class AmountType : FieldType<decimal?>
{
    /// <summary>An amount as the household writes it, with all decimals of its currency.</summary>
    public static string Shown(decimal amount, SetupFacts facts)
    {
        // A currency that changes has left amounts behind that it may not have room for.
        string decimals = new('0', facts.Currency.Decimals);
        string plain = amount.ToString("0." + decimals + "##########", CultureInfo.InvariantCulture);
        Result<Money> money = Money.ParsePlain(plain, facts.Currency);
        return money.Ok ? money.Value.ToString(facts.Style) : facts.Style.Written(plain);
    }

    /// <inheritdoc/>
    public override string Show(decimal? value, SetupFacts facts) => Shown(value!.Value, facts);

    /// <inheritdoc/>
    public override Result<decimal?> Take(string text, SetupFacts facts)
    {
        Result<Money> amount = Money.ParseSum(text, facts.Currency, facts.Style);
        return amount.Ok ? Result.Of<decimal?>(amount.Value.ToDecimal()) : Result.Refused<decimal?>(amount.Fault);
    }
}
