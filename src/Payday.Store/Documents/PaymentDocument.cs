using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A payment of a due as it is stored.</summary>
internal static class PaymentDocument
{
    public static readonly RecordForm<DuePayment> Form =
        new(CollectionNames.Payments, payment => payment.Number, (left, right) => left.Number.CompareTo(right.Number), Write, Read) { IsNumbered = true };

    private static void Write(IFieldWriter to, DuePayment payment)
    {
        to.Whole("_id", payment.Number);
        to.OptionalText("bill", payment.Key.Bill?.Text);
        to.OptionalText("debt", payment.Key.Debt?.Text);
        to.Date("due", payment.Key.Scheduled);
        to.Date("date", payment.Date);
        to.Amount("amount", payment.Amount);
        to.Flag("completes", payment.Completes);
        to.Whole("firstMovement", payment.FirstMovement);
        to.Whole("lastMovement", payment.LastMovement);
        to.OptionalFlag("undone", payment.Undone ? true : null);
        to.OptionalAmount("asked", payment.Asked);
    }

    private static DuePayment Read(IFieldReader from)
    {
        long number = from.Whole("_id");
        string? bill = from.OptionalText("bill");
        string? debt = from.OptionalText("debt");
        return new(
            number,
            bill is not null ? new DueKey(new BillId(bill), from.Date("due"))
                : debt is not null ? new DueKey(new DebtId(debt), from.Date("due"))
                : throw new FormatException("A payment is of no due."),
            from.Date("date"),
            from.Amount("amount"),
            from.Flag("completes"),
            from.Whole("firstMovement"),
            from.Whole("lastMovement"))
        {
            Undone = from.OptionalFlag("undone") ?? false,
            Asked = from.OptionalAmount("asked"),
        };
    }
}
