using System.Globalization;

namespace Payday.Core.CardPurchases;

/// <summary>A line of a list of purchases that could not be read.</summary>
/// <param name="Number">Its line in the text, from 1; 0 for the whole list.</param>
/// <param name="Fault">What is wrong with it, one sentence.</param>
public sealed record PurchaseFault(int Number, string Fault)
{
    /// <summary>The sentence, with the line in front.</summary>
    public override string ToString() => Number == 0 ? Fault : string.Create(CultureInfo.InvariantCulture, $"Line {Number}: {Fault}");
}
