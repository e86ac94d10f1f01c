using NodaTime;

namespace Payday.Statements.Matching;

/// <summary>A line that the household expects the bank to show, or has entered: what a statement's lines are held against.</summary>
/// <param name="Number">What it is known by, unique; ties go to the smaller one.</param>
/// <param name="Date">The day it was entered for.</param>
/// <param name="MinorUnits">Signed, in minor units of the account's currency.</param>
/// <param name="Text">The name of its bill, source, shop or purpose.</param>
/// <param name="Kind">What it is.</param>
public sealed record AccountLine(int Number, LocalDate Date, long MinorUnits, string Text, AccountLineKind Kind)
{
    /// <summary>How far the amount may differ, in minor units: for bills that vary. Zero where it must be exact.</summary>
    public long Tolerance { get; init; }

    /// <summary>The mandate or the other side's account, where it is known from before; else empty.</summary>
    public string Mandate { get; init; } = "";

    /// <summary>The number of a cheque; else empty.</summary>
    public string ChequeNumber { get; init; } = "";
}
