using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Dues;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>Bills and minimums that have left the account: first those that are due by today, then any other by its name.</summary>
/// <param name="session">The book.</param>
internal sealed class DuesPart(BookSession session) : Part
{
    private const int DaysAhead = 62;
    private const string Paid = "due ";

    /// <inheritdoc/>
    public override string Name => "bills";

    /// <inheritdoc/>
    public override string Empty => "No bill or minimum falls due.";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions
    {
        get
        {
            ImmutableArray<DueLine> open = AllOpen;
            Question[] all =
            [
                .. PaymentToMake.Of(session.Book).Select(Of),
                .. open.Where(due => due.Date <= session.Today).Select(Of),
                .. open.IsEmpty ? Array.Empty<Question>() : [Other(open)],
            ];
            return [.. all.Select(question => question with { Under = Name, Heading = () => [Heading(open)], Words = new DuesScreen(session).Words })];
        }
    }

    private ImmutableArray<DueLine> AllOpen => DueLines.Of(session.Book, session.Today.PlusDays(DaysAhead));

    /// <inheritdoc/>
    public override Part? Open(string name) => AllOpen.FirstOrDefault(due => Paid + IdOf(due) == name) is { } due ? Payment(due) : null;

    private string Heading(ImmutableArray<DueLine> open)
    {
        Money past = UntickedDues.By(open, PaymentToMake.Of(session.Book), session.Today, session.Book.Household.Currency);
        return past.IsZero ? "Bills and minimums. Nothing that is due by today waits." : $"Bills and minimums. {Shown(past)} due by today is not ticked.";
    }

    private Question Of(DueLine due) => new(
        IdOf(due),
        $"{due.Name}, due {DateText.Weekday(due.Date)}: {Shown(due.Rest)} to pay, the account has {Shown(due.Has)} for it. Is it paid? no proposed.",
        answer => answer.ToUpperInvariant() is "FREE" ? Free(due) : YesOrNo.Read(answer, false) switch
        {
            null => new Taken.Refused("Type yes where it has left the account, no where it hasn't, or free where it needs no more money."),
            true => new Taken.Into(Payment(due)),
            _ => Taken.On,
        })
    {
        Help = ["yes asks for the amount and the day; free says that what is to be paid of it needs no more money, and what is set aside for it is left to place on the next payday."],
    };

    private Question Of(PaymentToMake own) => new(
        $"extra {own.DebtId.Text} {own.Line}",
        $"{NameOf(own)}: {Shown(own.Amount)} above its minimum is yours to pay, since the payday of {DateText.Weekday(own.Since)}. Have you paid it? no proposed.",
        answer => YesOrNo.Read(answer, false) switch
        {
            null => new Taken.Refused("Type yes where you have paid it, or no."),
            true => Said(own),
            _ => Taken.On,
        })
    {
        Help = ["The account here counts it as paid since that payday; it is asked until the bank shows it or the next payday is closed."],
    };

    private Taken.Next Said(PaymentToMake own)
    {
        session.Take(own.Turned(session.Book));
        return new Taken.Next($"{Shown(own.Amount)} to {NameOf(own)} is paid. payday due \"{NameOf(own)}\" --extra no takes it back.");
    }

    private string NameOf(PaymentToMake own) => CleanText.OneLine(EndText.Debt(session.Book.Household, own.DebtId));

    private Question Other(ImmutableArray<DueLine> open) => new("other", "Was any other bill or minimum paid? no proposed; else type its name.", answer =>
    {
        if (answer.Length == 0 || YesOrNo.Read(answer, false) is false)
        {
            return new Taken.Done("");
        }

        return Choice(open).Find(answer, out DueLine due) is { } fault ? new Taken.Refused(fault) : new Taken.Into(Payment(due));
    })
    {
        Help = [.. open.DistinctBy(due => due.Name).Select(due => $"{due.Name}, due {DateText.Long(due.Date)}: {Shown(due.Rest)} to pay, the account has {Shown(due.Has)} for it.")],
    };

    // The earliest of each name.
    private static NamedChoice<DueLine> Choice(ImmutableArray<DueLine> open) =>
        new([.. open.DistinctBy(due => due.Name).Select(due => (CleanText.OneLine(due.Name), due))]);

    private FormPart Payment(DueLine due)
    {
        DuePayment? paid = null;
        return new FormPart(session, Paid + IdOf(due), new DueScreen(session, due, payment => paid = payment), () => paid is { Completes: false } part
            ? $"{due.Name}: {Shown(part.Amount)} paid; {Shown(part.Asked!.Value - part.Amount)} is still to pay. {Undo(part)}"
            : $"{due.Name} is paid. {Undo(paid!)}");
    }

    private static string Undo(DuePayment payment) => $"payday due --undo {payment.Number} takes it back.";

    private Taken Free(DueLine due)
    {
        Result<Book> after = Paying.Enter(session.Book, new DueEntry(due.Key, session.Today, Money.Zero(due.Rest.Currency), FreesRest: true), session.Today);
        if (!after.Ok)
        {
            return new Taken.Refused(FaultTexts.Of(after.Fault, session.Style));
        }

        session.Take(after.Value);
        return new Taken.Next($"{due.Name} needs no more money: {Shown(due.Has - due.Bought)} is left to place on the next payday. {Undo(after.Value.Weeks.Payments[^1])}");
    }

    private static string IdOf(DueLine due) => $"{(due.Key.Bill is { } bill ? "bill " + bill.Text : "debt " + due.Key.Debt!.Value.Text)} {due.Key.Scheduled:uuuu-MM-dd}";

    private string Shown(Money amount) => amount.ToString(session.Style);
}
