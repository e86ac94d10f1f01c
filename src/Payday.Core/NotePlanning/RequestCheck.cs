using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Core.NotePlanning;

/// <summary>Refuses requests that no caller should make.</summary>
internal static class RequestCheck
{
    /// <summary>Throws for what <see cref="NotePlanner.Plan"/> says it throws for.</summary>
    public static void ThrowIfWrong(NoteRequest request)
    {
        Require(!request.Notes.IsDefaultOrEmpty, "At least one note must be in use.");
        Require(!request.Parts.IsDefault, "The parts are missing.");
        Currency currency = request.Currency;
        foreach (Money note in request.Notes)
        {
            Require(note.Currency == currency && note.IsPositive, "Notes must be above zero and of one currency.");
        }

        foreach ((long value, int count) in request.Loose)
        {
            Require(value > 0 && count >= 0, "Notes on hand must be above zero in value, and not below zero in number.");
        }

        if (request.Source is CashSource.Machine machine)
        {
            Require(!machine.Notes.IsDefaultOrEmpty, "A machine must give at least one note.");
            Require(
                machine.Notes.All(note => note.Currency == currency && note.IsPositive),
                "A machine's notes must be above zero and of the same currency.");
            Require(IsAmount(machine.Limit, currency), "A machine's limit must not be below zero, and of the same currency.");
        }

        foreach (NotePart part in request.Parts)
        {
            Require(IsAmount(part.Amount, currency), "A part must not be below zero, and of the same currency.");
            Require(IsNote(part.Wishes.TopNote, currency), "A top note must be above zero and of the same currency.");
            Require(
                IsNote(part.Wishes.Small?.Note, currency) && IsAmount(part.Wishes.Small?.AtLeast, currency),
                "Small money must not be below zero, and of the same currency.");
        }
    }

    private static bool IsAmount(Money? amount, Currency currency) =>
        amount is not { } given || (given.Currency == currency && !given.IsNegative);

    private static bool IsNote(Money? note, Currency currency) =>
        note is not { } given || (given.Currency == currency && given.IsPositive);

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new ArgumentException(otherwise);
        }
    }
}
