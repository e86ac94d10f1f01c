using Payday.Core.Amounts;
using Payday.Core.Drafts;

namespace Payday.Store.Formats;

/// <summary>One reading of a file: what its parts need of each other while they are read.</summary>
public sealed class FileReading
{
    // Where the currency itself is wrong, amounts are still read, with the most decimals any currency has.
    private static readonly Currency MostDecimals = Currency.FromCode("CLF");

    /// <summary>The currency of every amount, once it was read.</summary>
    public Currency Currency { get; set; } = MostDecimals;

    /// <summary>Whether fields that aren't known are passed over.</summary>
    public bool IsLenient { get; init; }

    /// <summary>What the file calls an item that has a name of its own in it.</summary>
    internal Dictionary<DraftStep, string> Names { get; } = [];
}
