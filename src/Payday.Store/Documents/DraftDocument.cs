using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Cash;
using Payday.Core.Books;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Store.Edits;
using Payday.Store.Fields;

namespace Payday.Store.Documents;

/// <summary>A routine begun, as it is stored: the decisions alone.</summary>
internal static class DraftDocument
{
    public static readonly RecordForm<RoutineDraft> Form =
        new(CollectionNames.Drafts, draft => Bson.Of(draft.Payday), (left, right) => left.Payday.CompareTo(right.Payday), Write, Read);

    private static void Write(IFieldWriter to, RoutineDraft draft)
    {
        to.Date("_id", draft.Payday);
        to.Choice("step", StoredChoices.Steps, draft.Step);
        to.Amounts("incomes", draft.Incomes, static source => source.Text);
        to.Amounts("oneOffs", draft.OneOffs, static name => name);
        to.List("dues", draft.Dues, static (item, due) =>
        {
            item.Text("bill", due.Key.Bill!.Value.Text);
            item.Date("date", due.Key.Scheduled);
            item.OptionalAmount("actual", due.Value.Actual);
            item.OptionalFlag("paid", due.Value.Paid);
        });
        to.OptionalChoice("setAsides", StoredChoices.SetAsideModes, draft.SetAsides);
        to.Amounts("debtPayments", draft.DebtPayments, static debt => debt.Text);
        to.OptionalAmount("fromBuffer", draft.FromBuffer);
        to.OptionalList<KeyValuePair<DueKey, Money>>("minimums", draft.Minimums.IsEmpty ? null : [.. draft.Minimums], static (item, due) =>
        {
            item.Text("debt", due.Key.Debt!.Value.Text);
            item.Date("date", due.Key.Scheduled);
            item.Amount("amount", due.Value);
        });
        to.OptionalList<KeyValuePair<DueKey, bool>>("paidMinimums", draft.PaidMinimums.IsEmpty ? null : [.. draft.PaidMinimums], static (item, due) =>
        {
            item.Text("debt", due.Key.Debt!.Value.Text);
            item.Date("date", due.Key.Scheduled);
            item.Flag("paid", due.Value);
        });
        to.Amounts("fills", draft.Fills, static pot => pot.Text);
        to.List("notes", draft.Notes, static (item, part) =>
        {
            item.Text("pot", part.Key.PotId.Text);
            item.OptionalDate("week", part.Key.Week);
            item.Notes("notes", part.Value);
        });
        to.Flag("leavesNotesAtHome", draft.LeavesNotesAtHome);
        to.Flag("asksATeller", draft.AsksATeller);
        to.Flag("usesOwedBack", draft.UsesOwedBack);
        to.OptionalList<Money>("machineNotes", draft.Machine?.Notes, static (item, note) => item.Amount("note", note));
        to.OptionalAmount("machineLimit", draft.Machine?.Limit);
        to.OptionalList<Placement>("placements", draft.Placements, static (item, placed) =>
        {
            CountDocument.WriteTarget(item, placed.Target);
            item.Amount("amount", placed.Amount);
        });
        to.OptionalAmount("toOverdraft", draft.ToOverdraft);
    }

    // Fields with "Optional" are not in drafts of the first weeks of this format.
    private static RoutineDraft Read(IFieldReader from) => new(from.Date("_id"))
    {
        Step = from.Choice("step", StoredChoices.Steps),
        Incomes = from.Amounts("incomes", static text => new SourceId(text)),
        OneOffs = from.Amounts("oneOffs", static name => name, StringComparer.Ordinal),
        Dues = from.List("dues", static item => KeyValuePair.Create(
            new DueKey(new BillId(item.Text("bill")), item.Date("date")),
            new DueDecision(item.OptionalAmount("actual"), item.OptionalFlag("paid")))).Sorted(),
        SetAsides = from.OptionalChoice("setAsides", StoredChoices.SetAsideModes),
        DebtPayments = from.Amounts("debtPayments", static text => new DebtId(text)),
        FromBuffer = from.OptionalAmount("fromBuffer"),
        Minimums = (from.OptionalList("minimums", static item => KeyValuePair.Create(
            new DueKey(new DebtId(item.Text("debt")), item.Date("date")), item.Amount("amount"))) ?? []).Sorted(),
        PaidMinimums = (from.OptionalList("paidMinimums", static item => KeyValuePair.Create(
            new DueKey(new DebtId(item.Text("debt")), item.Date("date")), item.Flag("paid"))) ?? []).Sorted(),
        Fills = from.Amounts("fills", static text => new PotId(text)),
        Notes = (from.OptionalList("notes", static item => KeyValuePair.Create(
            new PartKey(new(item.Text("pot")), item.OptionalDate("week")), item.Notes("notes"))) ?? []).Sorted(),
        LeavesNotesAtHome = from.OptionalFlag("leavesNotesAtHome") ?? false,
        AsksATeller = from.OptionalFlag("asksATeller") ?? false,
        UsesOwedBack = from.OptionalFlag("usesOwedBack") ?? false,
        Machine = Machine(from.OptionalList("machineNotes", static item => item.Amount("note")), from.OptionalAmount("machineLimit")),
        Placements = from.OptionalList("placements", static item => new Placement(
            CountDocument.ReadTarget(item), item.Amount("amount"))),
        ToOverdraft = from.OptionalAmount("toOverdraft"),
    };

    // Both are asked for, whether there is a machine or not: a form without names keeps the order of its fields.
    private static CashSource.Machine? Machine(ImmutableArray<Money>? notes, Money? limit) => notes is { } some ? new CashSource.Machine(some, limit) : null;
}
