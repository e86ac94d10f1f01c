using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Dues;

/// <summary>Bills and minimums, what was paid of late and what comes, with what each has: ticked once they have left the account.</summary>
internal sealed class DuesScreen : CursorScreen
{
    private const string PaidHelp = "It has left the account: Right takes all of it today, or type another amount or day first.";
    private const int DaysBack = 35;
    private const int DaysAhead = 62;

    private readonly BookSession session;
    private (Book Book, LocalDate Today, ImmutableArray<PaidDue> Paid, ImmutableArray<PaymentToMake> Extra, ImmutableArray<DueLine> Open)? shown;

    /// <summary>Begins at the first due that is to be paid.</summary>
    public DuesScreen(BookSession session)
    {
        this.session = session;
        Cursor = Paid.Length + Extra.TakeWhile(own => own.IsSaid).Count();
    }

    /// <inheritdoc/>
    public override string Title => "Bills and minimums";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Has", "what is set aside for it now, the earliest due first; of a bill the money of its later dues pays too, then the buffer."),
        ("Minimum", "the least that must be paid on a debt by a day; its money waits in the account until it is ticked."),
        ("Extra", "what the last payday put on a debt above its minimum: nothing else reminds of it, so it is here until the bank shows it or the next payday is closed; Space says that you paid it."),
        ("In part", "an amount below what is to be paid leaves the rest to pay, until that is paid or freed."),
        ("Freed", "it needs no more money: what was set aside for it is left to place on the next payday."),
    ];

    /// <inheritdoc/>
    protected override string Aside => DateText.Long(session.Today);

    /// <inheritdoc/>
    protected override int Count => Open.Length + Extra.Length + Paid.Length;

    /// <inheritdoc/>
    protected override string Empty => "No bill or minimum falls due. h on home enters bills and debts.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => (Here, Done) switch
    {
        _ when Own is { } own => [session.Changing(this, new(Key.Space, "Space", own.IsSaid ? "not paid" : "paid", "You have paid it yourself; Space again says that you haven't.", () => Tick(own)))],
        ({ } due, _) =>
        [
            session.Changing(this, new(Key.Space, "Space", "paid", PaidHelp, () => ToPaid(due))),
            session.Changing(this, new(Key.Enter, "Enter", "", PaidHelp, () => ToPaid(due))),
            session.Changing(this, Letters.TakeOut.Does("free its money", "What is to be paid of it needs no more money; after a question.", () => new Way.To(Free(due)))),
            session.Changing(this, Letters.Undo.Does(session.Book.Weeks.StandingPayments.Any() ? "undo" : "", "Take back the last payment that was ticked, after a question.", ToLast)),
        ],
        (_, { Number: { } number }) => [session.Changing(this, Letters.Undo.Does("undo", "Take back this payment, after a question.", () => new Way.To(PaymentBack.Question(session, number))))],
        _ => [],
    };

    /// <inheritdoc/>
    protected override string Detail => CleanText.OneLine((Here, Done) switch
    {
        _ when Own is { } own => $"{Name(own)}: pay {Shown(own.Amount)} above its minimum yourself; the account here counts it as paid since the payday of {DateText.Weekday(own.Since)}. {(own.IsSaid ? "You said that it is paid" : "Space says that you did")}; it is here until the bank shows it or the next payday is closed.",
        ({ } due, _) => $"{due.Name}, due {DateText.Long(due.Date)}: {Shown(due.Rest)} to pay{(due.Paid.IsZero ? "" : $", {Shown(due.Paid)} was paid")}; the account has {Shown(due.Has)} for it{(due.Bought.IsPositive ? $", {Shown(due.Bought)} of it for what was bought with the card" : "")}."
            + (due.Date < session.Today ? " Past its day: the next payday ticks it; untick it there if unpaid." : ""),
        (_, { Number: null } paid) => $"{paid.Name}: {Shown(paid.Amount)}, marked paid by the payday of {DateText.Day(paid.PaidOn)}. On home: l, then u on it undoes it.",
        (_, { } paid) => $"{paid.Name}: {(paid.Amount.IsZero ? DuesReport.State(paid) : $"{Shown(paid.Amount)} paid")} on {DateText.Long(paid.PaidOn)}{(paid is { IsFreed: true, Amount.IsPositive: true } ? ", the rest freed" : "")}.",
        _ => "",
    });

    /// <inheritdoc/>
    protected override string Status
    {
        get
        {
            Money past = UntickedDues.By(Open, Extra, session.Today, session.Book.Household.Currency);
            return past.IsZero ? "Nothing that is due by today waits." : $"{Shown(past)} due by today is not ticked.";
        }
    }

    private ImmutableArray<DueLine> Open => Shown().Open;

    private ImmutableArray<PaidDue> Paid => Shown().Paid;

    private ImmutableArray<PaymentToMake> Extra => Shown().Extra;

    private PaymentToMake? Own => Cursor - Paid.Length is var at && at >= 0 && at < Extra.Length ? Extra[at] : null;

    private DueLine? Here => Cursor - Paid.Length - Extra.Length is var at && at >= 0 && at < Open.Length ? Open[at] : null;

    private PaidDue? Done => Cursor < Paid.Length ? Paid[Cursor] : null;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [Report.Names("Bill or debt"), new("") { Drops = 1 }, new("due"), Report.Amounts("amount"), Report.Amounts("has"), new("")],
            [
                .. Paid.Select(paid => ImmutableArray.Create(paid.Name, DuesReport.Kind(paid.Key), DateText.Weekday(paid.Date), Shown(paid.Amount), "", State(paid))),
                .. Extra.Select(own => ImmutableArray.Create(Name(own), DuesReport.Extra, DateText.Weekday(own.Since), Shown(own.Amount), "", own.IsSaid ? "paid" : "to pay")),
                .. Open.Select(due => ImmutableArray.Create(due.Name, DuesReport.Kind(due.Key), DateText.Weekday(due.Date), Shown(due.Rest), Shown(due.Has), State(due))),
            ],
            gap: width < 74 ? 1 : 2,
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (lines.Header, lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row)
    {
        if (row < Paid.Length)
        {
            return (RowSigns.Done, Ink.Done);
        }

        if (row < Paid.Length + Extra.Length)
        {
            return Extra[row - Paid.Length].IsSaid ? (RowSigns.Done, Ink.Done) : ('!', Ink.Alert);
        }

        DueLine due = Open[row - Paid.Length - Extra.Length];
        return due.Date > session.Today ? (' ', Ink.Quiet) : due.Has < due.Rest ? ('!', Ink.Alert) : (' ', Ink.Plain);
    }

    private (Book Book, LocalDate Today, ImmutableArray<PaidDue> Paid, ImmutableArray<PaymentToMake> Extra, ImmutableArray<DueLine> Open) Shown()
    {
        if (shown is not { } known || !ReferenceEquals(known.Book, session.Book) || known.Today != session.Today)
        {
            shown = known = (
                session.Book,
                session.Today,
                [.. DueLines.Paid(session.Book, session.Today.PlusDays(-DaysBack)).Reverse()],
                PaymentToMake.All(session.Book),
                DueLines.Of(session.Book, session.Today.PlusDays(DaysAhead)));
        }

        return known;
    }

    private string State(DueLine due) => due.Paid.IsPositive ? "rest to pay" : due.Date <= session.Today ? "to pay" : "not yet";

    private static string State(PaidDue paid) => paid switch
    {
        { IsFreed: true, Amount.IsZero: true } => DuesReport.State(paid),
        { IsFreed: true } => "paid, freed",
        _ => $"paid {DateText.Short(paid.PaidOn)}",
    };

    private string Name(PaymentToMake own) => EndText.Debt(session.Book.Household, own.DebtId);

    private Way Tick(PaymentToMake own)
    {
        session.Take(own.Turned(session.Book));
        News = $"{Shown(own.Amount)} to {CleanText.OneLine(Name(own))} {(own.IsSaid ? "is to be paid" : "is paid; Space again takes that back")}.";
        return Way.Stay;
    }

    private string Shown(Money amount) => amount.ToString(session.Style);

    private void Ticked(DuePayment payment)
    {
        Cursor = Math.Min(Cursor + 1, Count - 1);
        News = payment.Completes ? $"{Shown(payment.Amount)} to {CleanText.OneLine(NameOf(payment.Key.Owner))} ticked as paid." : $"{Shown(payment.Amount)} paid; {Shown(payment.Asked!.Value - payment.Amount)} is still to pay. x frees it.";
    }

    private string NameOf(DueOwner owner) => owner.Bill is { } bill ? EndText.Bill(session.Book.Household, bill) : EndText.Debt(session.Book.Household, owner.Debt!.Value);

    private Way ToLast() => session.Book.Weeks.StandingPayments.LastOrDefault() is { } last ? new Way.To(PaymentBack.Question(session, last.Number)) : new Way.Says("Nothing was ticked yet.");

    private Way.To ToPaid(DueLine due) => new(new DueScreen(session, due, Ticked));

    private FreeScreen Free(DueLine due) => new(session, due);
}
