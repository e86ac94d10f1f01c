namespace Payday.Core.Calendar;

/// <summary>Where a date that falls on a weekend or a bank holiday moves.</summary>
public enum Shift
{
    /// <summary>It stays.</summary>
    None,

    /// <summary>To the working day before.</summary>
    Before,

    /// <summary>To the working day after.</summary>
    After,
}
