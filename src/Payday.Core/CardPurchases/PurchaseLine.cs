using Payday.Core.Ids;

namespace Payday.Core.CardPurchases;

/// <summary>One line of a list of purchases.</summary>
/// <param name="Number">Its line in the text, from 1.</param>
/// <param name="Entry">What would be entered, its amount above zero; its pot is the guess, and means nothing while <see cref="IsOpen"/>.</param>
/// <param name="Guess">The guessed pot, or null where nothing like it was bought before.</param>
public sealed record PurchaseLine(int Number, PurchaseEntry Entry, PotGuess? Guess)
{
    /// <summary>Whether the money came in: a refund of what was bought.</summary>
    public bool IsRefund { get; init; }

    /// <summary>Where its pot comes from.</summary>
    public PotChoice Choice { get; init; } = Guess is null ? PotChoice.Open : PotChoice.Guessed;

    /// <summary>Whether nobody knows its pot yet.</summary>
    public bool IsOpen => Choice == PotChoice.Open;

    /// <summary>The line with a pot chosen by the person; null for the buffer.</summary>
    public PurchaseLine For(PotId? potId) => With(potId, PotChoice.Chosen);

    internal PurchaseLine With(PotId? potId, PotChoice choice) => this with { Entry = Entry.With([new PurchasePart(potId, Entry.Total)]), Choice = choice };
}
