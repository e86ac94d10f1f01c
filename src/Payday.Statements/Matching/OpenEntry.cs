namespace Payday.Statements.Matching;

/// <summary>An account line that the statement doesn't show.</summary>
/// <param name="Entry">The household's.</param>
/// <param name="Age">Days from its date to the statement's end; below zero for a later date.</param>
public sealed record OpenEntry(AccountLine Entry, int Age)
{
    // The days within which nearly all lines reach the bank; see PairScore.
    private const int DaysOnTheirWay = 5;

    /// <summary>Whether it is so new that the bank may well show it later.</summary>
    public bool IsOnItsWay => Age <= DaysOnTheirWay || Entry.Kind == AccountLineKind.Cheque;
}
