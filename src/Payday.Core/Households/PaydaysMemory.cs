using Payday.Core.Calendar;

namespace Payday.Core.Households;

/// <summary>The paydays of a household, kept with it until its sources or holidays are others.</summary>
/// <remarks>They say nothing of the household that it doesn't say itself, so any two are equal.</remarks>
internal sealed class PaydaysMemory : IEquatable<PaydaysMemory>
{
    private KnownPaydays? kept;

    /// <summary>The paydays, made where they are not yet.</summary>
    public KnownPaydays Of(Household household) => kept ??= new KnownPaydays(household.Sources, household.Settings.Holidays);

    /// <inheritdoc/>
    public bool Equals(PaydaysMemory? other) => other is not null;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PaydaysMemory);

    /// <inheritdoc/>
    public override int GetHashCode() => 0;
}
