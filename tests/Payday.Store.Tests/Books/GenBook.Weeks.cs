using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Store.Tests.Books;

internal static partial class GenBook
{
    private static readonly Gen<Notes?> SomeNotes = Gen.Select(Notes, Gen.Bool).Select((notes, there) => there ? notes : null);

    private static readonly Gen<long?> SomeNumbers = Gen.Select(Gen.Long[1, 3], Gen.Bool).Select((number, there) => there ? number : (long?)null);

    private static readonly Gen<MoveTarget?> SomeTargets =
        Gen.Select(Gen.Enum<PlacementTarget>(), Names, Gen.Bool).Select((target, id, there) => there ? Target(target, id) : null);

    /// <summary>Fills with every field.</summary>
    public static Gen<WalletFill> Fill { get; } =
        Gen.Select(Gen.Select(Dates, SomeDates, Names), Gen.Enum<FillState>(), Dates, Amounts, SomeNumbers)
            .Select((key, state, date, amount, movement) => new WalletFill(new FillKey(key.Item1, key.Item2, new PotId(key.Item3)), state, date, amount, movement)
            {
                Before = movement is null ? null : new WalletFill(new FillKey(key.Item1, key.Item2, new PotId(key.Item3)), FillState.Skipped, key.Item1, amount, null),
            });

    private static readonly Gen<TakenUp> SomeTakenUp =
        from fills in Gen.Select(Dates, SomeDates, Names).Array[0, 2]
        from movements in Gen.Long[1, 3].Array[0, 2]
        select new TakenUp([.. fills.Select(fill => new FillKey(fill.Item1, fill.Item2, new PotId(fill.Item3)))], [.. movements]);

    /// <summary>Purchases with every field.</summary>
    public static Gen<CardPurchase> Purchase { get; } =
        Gen.Select(Dates, Gen.Select(Names, Gen.Bool, Gen.Bool, Gen.Bool), Amounts, Amounts, Names, Gen.Bool, SomeTakenUp)
            .Select((date, pot, amount, owed, what, undone, taken) => new CardPurchase(1, date, pot.Item2 ? new PotId(pot.Item1) : null, amount, owed, what, 1, 2)
            {
                Undone = undone,
                TakenUp = taken,
                Whole = pot.Item3 ? 1 : null,
                Card = pot.Item4 ? new DebtId(what) : null,
            });

    /// <summary>Counts with every field.</summary>
    public static Gen<WeekCount> Count { get; } =
        from dates in Gen.Select(Dates, Dates, SomeDates)
        from names in Gen.Select(Names, Names)
        from amounts in Amounts.Array[7]
        from notes in SomeNotes
        from target in SomeTargets
        from move in SomeNumbers
        from undone in Gen.Bool
        from taken in SomeTakenUp
        select new WeekCount(
            1, dates.Item1, dates.Item2, new PotId(names.Item1), dates.Item3, amounts[0], amounts[1], amounts[2], amounts[3], amounts[4],
            notes, amounts[5], amounts[6], names.Item2, target, 1, 2, move)
        {
            Undone = undone,
            TakenUp = taken,
        };

    /// <summary>Returns with every field.</summary>
    public static Gen<CashReturn> Return { get; } =
        from dates in Gen.Select(Dates, SomeDates)
        from pots in Gen.Select(Names, Amounts, SomeNotes).Array[0, 3]
        from swaps in Gen.Select(Names, Names, Gen.Bool, Notes, Notes).Array[0, 3]
        from settles in Gen.Select(Gen.Enum<OwedKind>(), Gen.Long[1, 99], Amounts).Array[0, 3]
        from undone in Gen.Bool
        select new CashReturn(
            1,
            dates.Item1,
            dates.Item2,
            [.. pots.Select(pot => new ReturnedPot(new PotId(pot.Item1), pot.Item2, pot.Item3))],
            [.. swaps.Select(swap => new NoteSwap(new PotId(swap.Item1), swap.Item3 ? new PotId(swap.Item2) : null, swap.Item4, swap.Item5))],
            [.. settles.Select(settle => new SettledItem(new OwedKey(settle.Item1, settle.Item2), settle.Item3))],
            1,
            3)
        {
            Undone = undone,
        };

    /// <summary>Counts begun, with every field.</summary>
    public static Gen<CountDraft> CountDraft { get; } =
        from date in Dates
        from entries in Gen.Select(Names, Gen.Select(Amounts, SomeNotes, Amounts), Names, Gen.Select(Gen.Bool, Gen.Bool), SomeTargets).Array[0, 4]
        select entries.DistinctBy(entry => entry.Item1).Aggregate(new CountDraft(date), (draft, entry) => draft.With(
            new PotId(entry.Item1),
            new CountEntry(entry.Item2.Item1)
            {
                Notes = entry.Item2.Item2,
                Missing = entry.Item2.Item3,
                DifferenceName = entry.Item3,
                IsFind = entry.Item4.Item1,
                Then = entry.Item4.Item2 ? new CountThen(entry.Item5) : null,
            }));

    private static readonly Gen<LedgerEnd> SomeEnds = Gen.Select(Names, Gen.Int[0, 5]).Select((id, kind) => kind switch
    {
        0 => LedgerEnd.InAccount(Purpose.Buffer),
        1 => LedgerEnd.InCash(Purpose.Pot(new PotId(id))),
        2 => LedgerEnd.InAccount(Purpose.ForDebt(new DebtId(id))),
        3 => LedgerEnd.InAccount(Purpose.SetAside(new BillId(id))),
        4 => LedgerEnd.InAccount(Purpose.Overdraft),
        _ => new LedgerEnd.Owed(new DebtId(id)),
    });

    /// <summary>Payments of dues with every field.</summary>
    public static Gen<DuePayment> Payment { get; } =
        Gen.Select(Gen.Select(Names, Gen.Bool, Dates), Dates, Amounts, Gen.Bool, Gen.Bool)
            .Select((due, date, amount, completes, undone) => new DuePayment(
                1, due.Item2 ? new DueKey(new BillId(due.Item1), due.Item3) : new DueKey(new DebtId(due.Item1), due.Item3), date, amount, completes, 1, 2) { Undone = undone, Asked = completes ? null : amount });

    /// <summary>Moves with every field.</summary>
    public static Gen<Move> Move { get; } =
        Gen.Select(Dates, SomeEnds, SomeEnds, Amounts, Gen.Select(Names, Gen.Bool), SomeNotes, SomeTakenUp)
            .Select((date, from, to, amount, why, notes, taken) => new Move(1, date, from, to, amount, why.Item1, notes, 1, 2) { Undone = why.Item2, TakenUp = taken });

    /// <summary>Account entries with every field.</summary>
    public static Gen<AccountEntry> Entry { get; } =
        Gen.Select(Gen.Select(Dates, Gen.Enum<EntryKind>()), SomeEnds, Amounts, Gen.Select(Names, Gen.Bool), SomeNumbers, Gen.Select(SomeNotes, SomeNotes), SomeTakenUp)
            .Select((date, end, amount, what, cheque, notes, taken) =>
                new AccountEntry(1, date.Item1, date.Item2, end, amount, what.Item1, cheque, notes.Item1, 1, 2) { Undone = what.Item2, Counted = notes.Item2, TakenUp = taken });

    /// <summary>Reconciliations with every field.</summary>
    public static Gen<Reconciliation> Reconciliation { get; } =
        Gen.Select(Dates, Amounts, Amounts, Gen.Int[0, 3], Gen.Bool, Gen.Select(Names, SomeNumbers))
            .Select((date, balance, difference, lines, undone, name) => new Reconciliation(1, date, balance, difference, [.. Enumerable.Range(1, lines).Select(line => (long)line)])
            {
                Undone = undone,
                Name = undone ? "" : name.Item1,
                LastMovement = name.Item2,
            });

    /// <summary>Notes received with every field.</summary>
    public static Gen<NotesReceived> Received { get; } =
        Gen.Select(Dates, Dates, Notes, Gen.Select(Names, SomeDates, Notes).Array[0, 3], Gen.Bool)
            .Select((date, payday, got, parts, undone) => new NotesReceived(
                1, date, payday, got, [.. parts.Select(part => new ClosedPart(new PotId(part.Item1), part.Item2, part.Item3))], 1, 2) { Undone = undone });

    /// <summary>Forms begun, with every field.</summary>
    public static Gen<FormDraft> Form { get; } =
        Gen.Select(Gen.OneOf(Gen.Const("move"), Gen.Const("entry"), Gen.Const("due")), Gen.Select(Names, Names).Array[0, 3]).Select((form, texts) => new FormDraft(
            form, texts.DistinctBy(text => text.Item1).ToImmutableSortedDictionary(text => text.Item1, text => text.Item2, StringComparer.Ordinal)));

    /// <summary>Reconciliations begun, with every field.</summary>
    public static Gen<ReconciliationDraft> Reconciling { get; } =
        Gen.Select(Dates, Amounts, Gen.Bool, Gen.Long[1, 3].Array[0, 3], Names)
            .Select((date, balance, there, lines, name) => new ReconciliationDraft(date, there ? balance : null, [.. lines]) { Name = there ? name : null });

    private static readonly Gen<TakenLine> SomeTakenLine =
        Gen.Select(Dates, Amounts, Gen.Select(Names, Names, Names, Gen.Bool), Gen.Long[1, 3].Array[0, 2], Gen.Select(Gen.Enum<WrittenKind>(), Gen.Long[1, 3], Gen.Bool), Gen.Bool)
            .Select((date, amount, texts, lines, wrote, left) => new TakenLine(date, amount, texts.Item1, texts.Item4 ? texts.Item2 : "")
            {
                BankId = texts.Item4 ? "" : texts.Item3,
                Mandate = texts.Item4 ? texts.Item3 : "",
                Lines = [.. lines],
                Wrote = wrote.Item3 ? new WrittenRecord(wrote.Item1, wrote.Item2) : null,
                WasLeft = left,
            });

    private static readonly Gen<TakenStatement> SomeTakenStatement =
        Gen.Select(Gen.Select(Names, Gen.Bool), Dates, Dates, Amounts, SomeNumbers).Select((account, from, to, amount, number) => new TakenStatement(account.Item2 ? account.Item1 : "", from, to)
        {
            Opening = account.Item2 ? amount : null,
            Closing = account.Item2 ? null : amount,
            Sequence = number,
        });

    /// <summary>Statements taken, with every field.</summary>
    public static Gen<TakingOfStatements> Taking { get; } =
        Gen.Select(SomeTakenStatement.Array[1, 2], SomeTakenLine.Array[0, 3], Gen.Bool)
            .Select((statements, lines, undone) => new TakingOfStatements(1, [.. statements], [.. lines], 1) { Undone = undone });

    /// <summary>Rules for lines of statements, with every field.</summary>
    public static Gen<StatementRule> StatementRule { get; } =
        Gen.Select(Names, Gen.Enum<LineUse>(), SomeEnds, Gen.Bool, SomeEnds, Gen.Bool)
            .Select((words, use, end, there, other, named) => new StatementRule(words, new LineTarget(use, there ? end : null) { Other = named ? other : null }));

    /// <summary>Ways of reading files, with every field.</summary>
    public static Gen<KeptReading> Reading { get; } =
        Gen.Select(Names, Gen.Select(Names, Names).Array[0, 3]).Select((header, answers) => new KeptReading(
            header, answers.DistinctBy(answer => answer.Item1).ToImmutableSortedDictionary(answer => answer.Item1, answer => answer.Item2, StringComparer.Ordinal)));

    /// <summary>All that can happen between paydays, in the order in which a store gives it back.</summary>
    public static Gen<WeekRecords> Weeks { get; } =
        from fills in Fill.Array[0, 4]
        from purchases in Purchase.Array[0, 4]
        from counts in Count.Array[0, 4]
        from settled in Gen.Select(Gen.Enum<DifferenceEnd>(), Dates).Array[0, 2]
        from returns in Return.Array[0, 3]
        from draft in Gen.Select(CountDraft, Gen.Bool)
        from others in Gen.Select(Payment.Array[0, 3], Move.Array[0, 3], Entry.Array[0, 3], Reconciliation.Array[0, 3], Received.Array[0, 2])
        from taken in Gen.Select(Taking.Array[0, 2], StatementRule.Array[0, 2], Reading.Array[0, 2])
        from begun in Gen.Select(Form.Array[0, 3], Reconciling, Gen.Bool)
        select new WeekRecords(
            [.. fills.DistinctBy(fill => fill.Key).OrderBy(fill => fill.Key.Payday).ThenBy(fill => fill.Key.Week).ThenBy(fill => fill.Key.PotId)],
            [.. purchases.Select((purchase, i) => purchase with { Number = i + 1 })],
            [.. counts.Select((count, i) => count with { Number = i + 1, Together = (i / 2) + 1 })],
            [.. settled.Select((one, i) => new SettledDifference(i + 1, one.Item1, one.Item2, i + 1))],
            [.. returns.Select((back, i) => back with { Number = i + 1 })],
            draft.Item2 ? draft.Item1 : null)
        {
            Payments = [.. others.Item1.Select((one, i) => one with { Number = i + 1 })],
            Moves = [.. others.Item2.Select((one, i) => one with { Number = i + 1 })],
            Entries = [.. others.Item3.Select((one, i) => one with { Number = i + 1 })],
            Reconciliations = [.. others.Item4.Select((one, i) => one with { Number = i + 1 })],
            Takings = [.. taken.Item1.Select((one, i) => one with { Number = i + 1 })],
            StatementRules = [.. taken.Item2.DistinctBy(rule => rule.Words).OrderBy(rule => rule.Words, StringComparer.Ordinal)],
            Readings = [.. taken.Item3.DistinctBy(reading => reading.Header).OrderBy(reading => reading.Header, StringComparer.Ordinal)],
            Received = [.. others.Item5.Select((one, i) => one with { Number = i + 1 })],
            Forms = [.. begun.Item1.DistinctBy(form => form.Form).OrderBy(form => form.Form, StringComparer.Ordinal)],
            Reconciling = begun.Item3 ? begun.Item2 : null,
        };
}
