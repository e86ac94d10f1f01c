using Payday.Core.Faults;

namespace Payday.Core.CardPurchases;

/// <summary>Why a list of purchases, or a line of it, can't be read or entered.</summary>
public abstract record ListFault : Fault
{
    /// <summary>Something is wrong with a line.</summary>
    /// <param name="Number">Its line in the text, from 1.</param>
    /// <param name="What">What is wrong.</param>
    public sealed record AtLine(int Number, Fault What) : ListFault;

    /// <summary>The list has too many lines to be the right one.</summary>
    /// <param name="Lines">How many.</param>
    /// <param name="Most">How many it may have.</param>
    public sealed record TooManyLines(int Lines, int Most) : ListFault;

    /// <summary>The line hasn't a date, an amount and a text.</summary>
    public sealed record TooFewCells : ListFault;

    /// <summary>The cell that should have the date has none.</summary>
    /// <param name="Cell">The cell.</param>
    /// <param name="Why">What is wrong with it.</param>
    public sealed record NoDate(string Cell, Fault Why) : ListFault;

    /// <summary>The day is still to come.</summary>
    public sealed record StillToCome : ListFault;

    /// <summary>Two cells can be the amount.</summary>
    /// <param name="First">The first of them.</param>
    /// <param name="Second">The second.</param>
    public sealed record TwoAmounts(string First, string Second) : ListFault;

    /// <summary>The amount is zero.</summary>
    public sealed record Zero : ListFault;

    /// <summary>No pot is known for the line.</summary>
    public sealed record NoPot : ListFault;
}
