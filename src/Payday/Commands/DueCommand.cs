using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Status;
using Payday.Core.Undo;
using Payday.Json;
using Payday.Reports;
using Payday.Store;
using Payday.Store.Texts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday due</c>: bills and minimums, what has left the account and what is to.</summary>
internal static class DueCommand
{
    /// <summary>How many days of what was paid and of what comes are shown.</summary>
    public const int Days = 35;

    private const string Yes = "yes";
    private const string No = "no";

    public static Command Build(CommandShell shell)
    {
        var name = new Argument<string?>("NAME") { Description = "The bill or the debt. None: show them all.", Arity = ArgumentArity.ZeroOrOne };
        var amount = new Argument<string?>("AMOUNT") { Description = "What left the account. Default: all that is to be paid.", Arity = ArgumentArity.ZeroOrOne };
        Option<LocalDate?> on = OptionValues.Date("--on", "The day on which it left the account. Default: today.");
        Option<LocalDate?> due = OptionValues.Date("--due", "The due of that date. Default: the first that is to be paid.");
        var free = new Option<bool>("--free") { Description = "What is left of it needs no more money; without an amount all that is to be paid." };
        var extra = new Option<string?>("--extra") { Description = "Whether you have paid what the last payday put on the debt above its minimum: yes or no.", HelpName = "yes|no" };
        extra.LimitTo(Yes, No);
        Option<int?> undo = OptionValues.Count("--undo", "Take back the payment of this number.", 1, int.MaxValue);
        var command = new PaydayCommand(
            "due",
            "Show what bills and debt minimums are to be paid; with a name say that one has left the account.",
            "payday due Rent 840.00 --on 2026-03-03") { name, amount, on, due, free, extra, undo };
        return Invocation.Does(command, shell, call => call.OnBook(call.Parsed.GetValue(name) is not null || call.Parsed.GetValue(undo) is not null, (store, book) =>
        {
            ParseResult parsed = call.Parsed;
            LocalDate today = call.Shell.Today();
            LocalDate date = parsed.GetValue(on) ?? today;
            return (parsed.GetValue(name), parsed.GetValue(undo)) switch
            {
                (null, _) when parsed.GetValue(extra) is not null => new Answer.WrongUse("--extra needs the name of a debt."),
                ({ }, null) when parsed.GetValue(extra) is not null && (parsed.GetValue(amount) is not null || parsed.GetValue(on) is not null || parsed.GetValue(due) is not null || parsed.GetValue(free)) =>
                    new Answer.WrongUse("--extra goes with a name alone."),
                ({ } text, null) when parsed.GetValue(extra) is { } said => SayExtra(store, book, text, said == Yes),
                (null, null) => Told(book, false, DueLines.Of(book, today.PlusDays(Days)), DueLines.Paid(book, today.PlusDays(-Days)), ""),
                ({ } text, null) when date > today => new Answer.WrongUse($"--on {LocalDatePattern.Iso.Format(date)}: {DateTexts.StillToCome}"),
                ({ } text, null) => Pay(store, book, text, parsed.GetValue(amount), date, parsed.GetValue(due), parsed.GetValue(free), today),
                (null, { } number) => Undo(store, book, number, today),
                _ => new Answer.WrongUse("Give a name, or --undo NUMBER, not both."),
            };
        }));
    }

    private static Answer Pay(BookStore store, Book book, string name, string? text, LocalDate date, LocalDate? due, bool free, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<DueOwner> owner = Owner(book, name);
        if (!owner.Ok)
        {
            return Answer.Wrong(owner.Fault, style);
        }

        Result<Money>? amount = text is null ? null : Money.ParseSum(text, book.Household.Currency, style);
        if (amount is { Ok: false } no)
        {
            return Answer.Wrong(no.Fault, style);
        }

        DueLine? line = DueLines.Of(book, today.PlusMonths(BillDues.MonthsAhead))
            .FirstOrDefault(line => line.Key.Owner == owner.Value && (due is null || line.Date == due || line.Key.Scheduled == due));
        if (line is null)
        {
            return Answer.Because(due is { } day
                ? FaultTexts.Of(new DueFault.NotOpen(BookEntry.NameOf(book, owner.Value), day), style)
                : $"{BookEntry.NameOf(book, owner.Value)} has nothing to pay.");
        }

        Money? paid = amount?.Value ?? (free ? Money.Zero(book.Household.Currency) : null);
        Result<Book> entered = Paying.Enter(book, new DueEntry(line.Key, date, paid, free), today);
        if (!entered.Ok)
        {
            return Answer.Because(entered.Fault, style);
        }

        store.Save(book, entered.Value);
        return Told(
            entered.Value,
            true,
            DueLines.Of(entered.Value, today.PlusMonths(BillDues.MonthsAhead)).Where(rest => rest.Key == line.Key),
            DueLines.Paid(entered.Value, date).Where(one => one.Number == entered.Value.Weeks.Payments.Length),
            "Stored.");
    }

    private static Answer SayExtra(BookStore store, Book book, string name, bool paid)
    {
        Result<DueOwner> owner = Owner(book, name);
        if (!owner.Ok)
        {
            return Answer.Wrong(owner.Fault, book.Household.Settings.Numbers);
        }

        if (owner.Value.Debt is not { } debt || PaymentToMake.Say(book, debt, paid) is not { } said)
        {
            return Answer.Because($"The last payday put nothing on {BookEntry.NameOf(book, owner.Value)} above its minimum that waits to be paid.");
        }

        store.Save(book, said);
        return Told(said, true, [], [], paid ? "Stored: you have paid it." : "Stored: it is to be paid.");
    }

    private static Answer Undo(BookStore store, Book book, int number, LocalDate today)
    {
        if (Paying.InTheWay(book, number) is { } obstacle)
        {
            return UndoOption.Refused(book, obstacle);
        }

        Result<Book> undone = Paying.Undo(book, number, today);
        if (!undone.Ok)
        {
            return Answer.Because(undone.Fault, book.Household.Settings.Numbers);
        }

        store.Save(book, undone.Value);
        DuePayment payment = book.Weeks.Payments[number - 1];
        return Told(undone.Value, true, DueLines.Of(undone.Value, today.PlusMonths(BillDues.MonthsAhead)).Where(line => line.Key == payment.Key), [], "Taken back.");
    }

    private static Result<DueOwner> Owner(Book book, string text)
    {
        (DueOwner Owner, string Name, string Id)[] all =
        [
            .. book.Household.Bills.Select(bill => (DueOwner.Of(bill.Id), bill.Name, bill.Id.Text)),
            .. book.Household.Debts.Select(debt => (DueOwner.Of(debt.Id), debt.Name, debt.Id.Text)),
        ];
        string wanted = text.Trim();
        (DueOwner, string, string)[] found = [.. all.Where(one => string.Equals(one.Name, wanted, StringComparison.OrdinalIgnoreCase))];
        found = found.Length > 0 ? found : [.. all.Where(one => one.Id == wanted)];
        return found.Length == 1 ? Result.Of(found[0].Item1)
            : found.Length > 1 ? Result.Refused<DueOwner>(new ArgumentFault.TwoOwners(wanted))
            : Result.Refused<DueOwner>(new ArgumentFault.NoSuchOwner(wanted, [.. all.Select(one => one.Name)]));
    }

    private static Answer.Done Told(Book book, bool stored, IEnumerable<DueLine> open, IEnumerable<PaidDue> paid, string last)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        DueLine[] lines = [.. open];
        PaidDue[] done = [.. paid];
        ImmutableArray<PaymentToMake> extra = PaymentToMake.All(book);
        (PaymentToMake, string)[] own = [.. extra.Where(one => !stored && !one.IsSaid).Select(one => (one, Name(book, one)))];
        return new Answer.Done(
            [
                .. lines.Length + own.Length > 0 ? DuesReport.Open(own, lines, style) : stored ? [] : ["Nothing is to be paid."],
                .. own.Length > 0 ? ["Extra is what the last payday put on a debt above its minimum: pay it yourself, then say payday due NAME --extra yes."] : Array.Empty<string>(),
                .. lines.Length + own.Length > 0 && done.Length > 0 ? [""] : Array.Empty<string>(),
                .. done.Length > 0 ? DuesReport.Paid(done, style) : [],
                .. last.Length > 0 ? [last] : Array.Empty<string>(),
            ],
            JsonSerializer.Serialize(
                new DuesResult(
                    stored,
                    [.. lines.Select(line => new OpenDueResult(DuesReport.Kind(line.Key), line.Name, Iso(line.Date), line.Rest.ToPlain(), line.Paid.ToPlain(), line.Has.ToPlain()))],
                    [.. done.Select(one => new PaidDueResult(one.Number, DuesReport.Kind(one.Key), one.Name, Iso(one.Date), Iso(one.PaidOn), one.Amount.ToPlain(), one.IsFreed))],
                    [.. extra.Select(one => new ExtraPaymentResult(one.DebtId.Text, Name(book, one), one.Amount.ToPlain(), Iso(one.Since), one.IsSaid))]),
                ResultJson.Readable.DuesResult));
    }

    private static string Name(Book book, PaymentToMake one) => EndText.Debt(book.Household, one.DebtId);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
