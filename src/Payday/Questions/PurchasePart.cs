using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Cards;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;
using Humanizer;

namespace Payday.Questions;

/// <summary>A card purchase: what, how much, from which pot or pots, on which day and by which card. What was typed is kept until it is entered.</summary>
internal sealed class PurchasePart : Part
{
    private const string What = SaidPurchase.WhatField;
    private const string Amount = SaidPurchase.AmountField;
    private const string Pots = SaidPurchase.PotsField;
    private const string DayField = SaidPurchase.DayField;
    private const string Card = SaidPurchase.CardField;
    private const int LongestWhat = 60;

    private readonly BookSession session;
    private readonly KeptForm form;

    public PurchasePart(BookSession session)
    {
        this.session = session;
        form = new KeptForm(session, SaidPurchase.Form);
    }

    /// <inheritdoc/>
    public override string Name => "card";

    /// <inheritdoc/>
    public override string Empty => "There is nothing to enter.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions =>
    [
        .. ((Question[])[Bought(), Paid(), From(), On(), .. session.Book.Household.Debts.IsEmpty ? Array.Empty<Question>() : [By()], Enter()])
            .Select(question => question with { Under = Name, Heading = () => ["Bought by card."], Words = new PurchasesScreen(session).Words }),
    ];

    private Household Household => session.Book.Household;

    private FormField Day => session.Day(DayField, "Day", "The day of the purchase, like 2026-03-12 or 12 Mar; yesterday works too.");

    private Money? Total => form[Amount] is { } text && TypedFields.AmountIn(session, text) is { Ok: true, Value: { IsZero: false } amount } ? amount : null;

    private DebtId? PaidBy => form[Card] is { } id && Household.Debts.FirstOrDefault(debt => debt.Id.Text == id) is { } debt ? debt.Id : null;

    // As it was said, or else a guess from what was bought before, or else the first pot.
    private string PotsText => form[Pots] ?? PotChoices.Name(session.Book, PotGuess.For(session.Book, form[What] ?? "") is { } guess ? guess.PotId : Household.Pots.IsEmpty ? null : Household.Pots[0].Id);

    private Question Bought() => new(What, $"What was it? {(form[What] is { } what ? $"\"{what}\" as you said." : "Nothing proposed; it may stay empty.")}", answer =>
    {
        string clean = CleanText.OneLine(answer).Trim();
        if (clean.Length > LongestWhat)
        {
            return new Taken.Refused($"At most {LongestWhat} characters, please.");
        }

        return Kept(What, clean);
    })
    {
        Help = ["What it was, in a few words: it helps to guess the pot the next time."],
    };

    private Question Paid() => new(Amount, $"What the card paid: {(Total is { } total ? $"{Shown(total)} as you said" : "nothing proposed")}. How much?", answer =>
    {
        if (answer.Length == 0)
        {
            return Total is null ? new Taken.Refused("Type what the card paid, or below zero what came back.") : Taken.On;
        }

        Result<Money> read = TypedFields.AmountIn(session, answer);
        return !read.Ok ? new Taken.Refused(FaultTexts.Of(read.Fault, session.Style))
            : read.Value.IsZero ? new Taken.Refused("Write what the card paid, or below zero what came back.")
            : Kept(Amount, answer);
    })
    {
        Help = [$"A sum like {session.Style.Written("12.50+3")} is taken. Below zero, like {session.Style.Written("-12.50")}, is a refund."],
    };

    private Question From() => new(Pots, $"For which pot? {PotsText} {(form[Pots] is null ? "proposed" : "as you said")}.", answer =>
        answer.Length == 0 ? Taken.On
        : PotChoices.Read(session.Book, answer, session.Style, out _) is { } wrong ? new Taken.Refused(wrong)
        : Kept(Pots, answer))
    {
        Help = ["The name of a pot, or buffer; over several pots the amount of each, like Food=40; Fares. One without an amount has the rest.", PotChoices.Of(session.Book).Names],
    };

    private Question On() => new(DayField, $"On which day? {Day.Show(form[DayField] ?? Day.Usual)} {(form[DayField] is null ? "proposed" : "as you said")}.", answer =>
        answer.Length == 0 ? Taken.On : Day.Fault(answer) is { } fault ? new Taken.Refused(fault) : Kept(DayField, Day.Keep(answer)))
    {
        Help = [Day.Help],
    };

    private Question By() => new(Card, $"Paid by which card? {(PaidBy is { } card ? $"{EndText.Debt(Household, card)} as you said" : "account proposed")}.", answer =>
    {
        if (answer.Length == 0)
        {
            return Taken.On;
        }

        var cards = new NamedChoice<string?>([("account", null), .. Household.Debts.Select(debt => (CleanText.OneLine(debt.Name), (string?)debt.Id.Text))]);
        return cards.Find(answer, out string? id) is { } fault ? new Taken.Refused(fault) : Kept(Card, id ?? "");
    })
    {
        Help =
        [
            "account, or the debt whose card paid. By the card of a debt nothing leaves the account: the balance rises, and the pot's money waits for the debt's next payment.",
            $"The debts are: {(Household.Debts.Select(debt => debt.Name).Humanize("and"))}.",
        ],
    };

    private Question Enter()
    {
        string card = PaidBy is { } by ? $", by {EndText.Debt(Household, by)}" : "";
        string what = form[What] is { } said ? $", {said}" : "";
        return new Question("enter", $"{(Total is { } total ? Shown(total) : "No amount")} for {PotsText}{what}, {Day.Show(form[DayField] ?? Day.Usual)}{card}. Enter it? yes proposed.", answer => YesOrNo.Read(answer, true) switch
        {
            null => new Taken.Refused(YesOrNo.Neither),
            false => new Taken.Done("Nothing was written; what was typed is here again the next time."),
            _ => Write(),
        })
        {
            Help = ["yes writes the purchase to the ledger; no leaves it, and what was typed is here again the next time. payday spend --undo takes it back."],
        };
    }

    private Taken Write()
    {
        if (Total is not { } total)
        {
            return new Taken.To(Amount, "Type what the card paid first.");
        }

        if (PotChoices.Read(session.Book, PotsText, session.Style, out ImmutableArray<(PotId?, Money?)> parts) is { } gone)
        {
            return new Taken.To(Pots, gone);
        }

        Result<Book> after = PurchaseParts.Of(parts, total)
            .Then(all => Purchasing.Enter(session.Book, new PurchaseEntry(TypedFields.DayIn(session, form[DayField] ?? Day.Usual).Value, null, total, form[What] ?? "") { Card = PaidBy }.With(all)));
        if (!after.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(after.Fault, session.Style));
        }

        form.Done(after.Value);
        CardPurchase entered = session.Book.Weeks.Purchases[^1];
        return new Taken.Done($"It is card purchase {entered.WholeNumber}. payday spend --undo {entered.WholeNumber} takes it back.");
    }

    private Taken Kept(string field, string text)
    {
        form.Keep((field, text.Length == 0 && field != Card ? form[field] : text));
        return Taken.On;
    }

    private string Shown(Money amount) => amount.ToString(session.Style);
}
