using Payday.Core.Amounts;

namespace Payday.Core.Histories;

/// <summary>What a month usually has.</summary>
/// <param name="Amount">The lower median of the months: an amount that occurred.</param>
/// <param name="Months">How many months it is taken from, from <see cref="Fewest"/> to <see cref="Most"/>.</param>
public sealed record Usual(Money Amount, int Months)
{
    /// <summary>Of fewer months nothing is said.</summary>
    public const int Fewest = 3;

    /// <summary>Older months say little about this one.</summary>
    public const int Most = 12;

    /// <summary>The usual of some months.</summary>
    /// <param name="before">Their amounts, the latest last; only the last <see cref="Most"/> count.</param>
    /// <returns>Null where they are too few.</returns>
    public static Usual? Of(IReadOnlyList<Money> before)
    {
        ArgumentNullException.ThrowIfNull(before);
        Money[] counted = [.. before.TakeLast(Most).Order()];
        return counted.Length < Fewest ? null : new Usual(counted[(counted.Length - 1) / 2], counted.Length);
    }
}
