using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Cards;

/// <summary>A card purchase as far as it was said: what, how much, for which pots, on which day, by which card.</summary>
/// <remarks>A new one is kept in the book as it is said (<see cref="KeptForm"/>): on the full screen and line by line it is the same one.</remarks>
internal sealed class SaidPurchase
{
    /// <summary>The name of the form in which a new one is kept, and of its fields.</summary>
    public const string Form = "purchase", WhatField = "what", AmountField = "amount", PotsField = "pots", DayField = "day", CardField = "card";

    private const int LongestWhat = 60;

    private readonly BookSession session;
    private readonly KeptForm? kept;
    private LocalDate? typed;

    /// <param name="session">The book.</param>
    /// <param name="changes">The purchase that it begins as; null for a new one, which begins as what was said of it before, or for the household's first pot.</param>
    public SaidPurchase(BookSession session, CardPurchase? changes)
    {
        this.session = session;
        if (changes is null)
        {
            kept = new KeptForm(session, Form);
            Begin();
            return;
        }

        ImmutableArray<CardPurchase> whole = session.Book.Weeks.PartsOf(changes.Number);
        What = changes.What;
        Amount = Money.Sum(whole.Select(part => part.Amount), session.Book.Household.Currency);
        Parts = [.. whole.Select((part, i) => new SaidPart(part.PotId, i == 0 ? null : part.Amount))];
        Card = changes.Card;
        IsPotChosen = true;
        typed = changes.Date;
    }

    /// <summary>Whether something was said of a new one, and is kept.</summary>
    public bool IsBegun => kept?.IsBegun == true;

    /// <summary>What it was; empty while nothing was said.</summary>
    public string What { get; private set; } = "";

    /// <summary>What the card paid; null while nothing was said.</summary>
    public Money? Amount { get; private set; }

    /// <summary>The pots, at least one; the first has what the others leave.</summary>
    public ImmutableArray<SaidPart> Parts { get; private set; }

    /// <summary>The debt whose card paid; null for the account.</summary>
    public DebtId? Card { get; private set; }

    /// <summary>Whether the pots were chosen, not guessed.</summary>
    public bool IsPotChosen { get; private set; }

    /// <summary>Whether something like it was bought before, from which the pot was guessed.</summary>
    public bool IsPotGuessed { get; private set; }

    /// <summary>The pots in a row, each with its part; of one its name alone.</summary>
    public string PotsText => Parts.Length == 1
        ? WeekText.PotName(session.Book, Parts[0].PotId)
        : string.Join(", ", Parts.Select(part => $"{WeekText.PotName(session.Book, part.PotId)} {(part.Amount ?? Rest)?.ToString(session.Style) ?? "the rest"}"));

    /// <summary>Which card paid.</summary>
    public string PaidBy => Card is { } debt ? EndText.Debt(session.Book.Household, debt) : "the account";

    /// <summary>The day of it. Today is asked for anew until a day is typed: a form begun yesterday is of today.</summary>
    public LocalDate Date => typed ?? session.Today;

    // Of one part alone.
    private Money? Rest => Amount - Money.Sum(Parts.Select(part => part.Amount).OfType<Money>(), session.Book.Household.Currency);

    /// <summary>Gives all of it to one pot.</summary>
    public void Choose(PotId? pot) => Choose([new SaidPart(pot, null)]);

    /// <summary>Parts it among pots.</summary>
    public void Choose(ImmutableArray<SaidPart> parts)
    {
        Parts = parts;
        IsPotChosen = true;
        kept?.Keep((PotsField, PotChoices.Written(session.Book, parts, session.Style)));
    }

    /// <summary>Takes the debt whose card paid; null for the account.</summary>
    public void TakeCard(DebtId? card)
    {
        Card = card;
        kept?.Keep((CardField, card?.Text));
    }

    /// <summary>Forgets what was said of a new one.</summary>
    public void Forget()
    {
        kept?.Forget();
        Begin();
    }

    /// <summary>Stores a book with the purchase in it, and forgets what was said of a new one in the same step.</summary>
    public void Done(Book after)
    {
        if (kept is null)
        {
            session.Take(after);
        }
        else
        {
            kept.Done(after);
        }
    }

    /// <summary>Takes what it was, in a few words; the pot is guessed from it until one is chosen.</summary>
    /// <returns>What is wrong with it; null for nothing.</returns>
    public string? TakeWhat(string text)
    {
        string clean = CleanText.OneLine(text).Trim();
        if (clean.Length > LongestWhat)
        {
            return $"At most {LongestWhat} characters, please.";
        }

        What = clean;
        kept?.Keep((WhatField, clean.Length == 0 ? null : clean));
        Guess();
        return null;
    }

    /// <summary>Takes what the card paid, or below zero what came back.</summary>
    /// <returns>What is wrong with it; null for nothing.</returns>
    public string? TakeAmount(string text)
    {
        Result<Money> read = Money.ParseSum(text, session.Book.Household.Currency, session.Style);
        if (!read.Ok)
        {
            return FaultTexts.Of(read.Fault, session.Style);
        }

        if (read.Value.IsZero)
        {
            return "Write what the card paid, or below zero what came back.";
        }

        Amount = read.Value;
        kept?.Keep((AmountField, text));
        return null;
    }

    /// <summary>Takes the day, today or before.</summary>
    /// <returns>What is wrong with it; null for nothing.</returns>
    public string? TakeDay(string text)
    {
        Result<LocalDate> day = TypedDate.Parse(text, session.Today, session.Book.Household.Settings.DateOrder);
        if (!day.Ok)
        {
            return FaultTexts.Of(day.Fault, session.Style);
        }

        if (day.Value > session.Today)
        {
            return $"{DateText.Long(day.Value)} has not come yet; write today or a day before.";
        }

        typed = day.Value;
        kept?.Keep((DayField, LocalDatePattern.Iso.Format(day.Value)));
        return null;
    }

    /// <summary>The purchase, once its amount is known.</summary>
    /// <returns>It; or why its parts don't come to the amount.</returns>
    public Result<PurchaseEntry> Entry(Money paid) => PurchaseParts.Of([.. Parts.Select(part => (part.PotId, part.Amount))], paid)
        .Map(all => new PurchaseEntry(Date, null, paid, What) { Card = Card }.With(all));

    // What can't be read any more, such as a pot that is gone, is as if it had not been said.
    private void Begin()
    {
        Book book = session.Book;
        What = kept![WhatField] ?? "";
        Amount = kept[AmountField] is { } amount && TypedFields.AmountIn(session, amount) is { Ok: true, Value: { IsZero: false } paid } ? paid : null;
        ImmutableArray<(PotId? PotId, Money? Amount)> read = [];
        IsPotChosen = kept[PotsField] is { } pots && PotChoices.Read(book, pots, session.Style, out read) is null;
        Parts = IsPotChosen ? [.. read.Select(part => new SaidPart(part.PotId, part.Amount))] : [new SaidPart(book.Household.Pots is [var first, ..] ? first.Id : null, null)];
        Guess();
        Card = kept[CardField] is { Length: > 0 } card ? book.Household.Debts.FirstOrDefault(debt => debt.Id.Text == card)?.Id : null;
        typed = kept[DayField] is { } day && TypedFields.DayIn(session, day) is { Ok: true } date ? date.Value : null;
    }

    private void Guess()
    {
        if (!IsPotChosen && PotGuess.For(session.Book, What) is { } guess)
        {
            Parts = [new SaidPart(guess.PotId, null)];
            IsPotGuessed = true;
        }
    }
}
