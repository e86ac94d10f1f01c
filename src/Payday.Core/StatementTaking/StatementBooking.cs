using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Reconciling;

namespace Payday.Core.StatementTaking;

/// <summary>Statements taken into the book: what their lines become is written down, and the account is reconciled by them (design, rules 14 and 15).</summary>
public static class StatementBooking
{
    /// <summary>Takes statements, all of them or nothing.</summary>
    /// <param name="book">The book.</param>
    /// <param name="wish">The statements, and what each line is to become.</param>
    /// <param name="today">The last day on which a due can have left the account.</param>
    /// <returns>
    /// The book afterwards, the taking being its last, with the reconciliation that came of it: to the bank's balance on the last
    /// day of the statements, or, where the account was held against a later balance already, to that one. A difference stands in
    /// it by its amount. Or why they can't be taken.
    /// </returns>
    public static Result<Book> Take(Book book, StatementWish wish, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(wish);
        if (Fault(book, wish) is { } fault)
        {
            return Result.Refused<Book>(fault);
        }

        if (LineFault(book, wish) is { } wrong)
        {
            return Result.Refused<Book>(wrong);
        }

        Book after = book;
        var lines = new List<TakenLine>();
        foreach (LineDecision decision in wish.Lines)
        {
            TakenLine line = decision.Line with { Lines = [.. decision.Lines.Order()], Wrote = null };
            if (decision.Target is { Use: not LineUse.Leave } && decision.Lines.IsEmpty)
            {
                Result<(Book Book, WrittenRecord Record)> written = LineWriting.Write(after, decision, today);
                if (!written.Ok)
                {
                    return Result.Refused<Book>(new TakingFault.AtLine(line, written.Fault));
                }

                after = written.Value.Book;
                line = line with { Wrote = written.Value.Record };
            }

            lines.Add(line);
        }

        AccountLines all = AccountLines.Of(after);
        lines = [.. lines.Select(line => line.Wrote is { } record ? line with { Lines = LinesOf(after, all, record) } : line)];
        Result<Book> reconciled = Reconciled(after, wish, [.. lines.SelectMany(line => line.Lines)]);
        if (!reconciled.Ok)
        {
            return reconciled;
        }

        // What was left before and is left again says nothing new.
        ImmutableArray<TakenLine> kept = [.. lines.Where(line => !(line.WasLeft && line.IsLeft))];
        return Result.Of(reconciled.Value with
        {
            Weeks = reconciled.Value.Weeks with
            {
                Takings = book.Weeks.Takings.Add(new TakingOfStatements(book.Weeks.Takings.Length + 1, wish.Statements, kept, reconciled.Value.Weeks.Reconciliations.Length)),
                Reconciling = book.Weeks.Reconciling,
            },
        });
    }

    /// <summary>The account lines that a record moves money by, by the numbers of their first movements, rising; of a cash return what was brought, without what that pays on debts.</summary>
    internal static ImmutableArray<long> LinesOf(Book book, AccountLines lines, WrittenRecord record)
    {
        (long first, long last) = Movements(book.Weeks, record);
        return
        [
            .. Enumerable.Range(0, (int)(last - first + 1)).Select(i => lines[first + i]).OfType<AccountLine>()
                .Where(line => record.Kind != WrittenKind.Return || line.Kind == AccountLineKind.Deposit).Select(line => line.Number).Distinct().Order(),
        ];
    }

    private static (long First, long Last) Movements(WeekRecords weeks, WrittenRecord record)
    {
        int at = (int)record.Number - 1;
        return record.Kind switch
        {
            WrittenKind.Payment => (weeks.Payments[at].FirstMovement, weeks.Payments[at].LastMovement),
            WrittenKind.Purchase => (weeks.Purchases[at].FirstMovement, weeks.Purchases[at].LastMovement),
            WrittenKind.Entry => (weeks.Entries[at].FirstMovement, weeks.Entries[at].LastMovement),
            WrittenKind.Return => (weeks.Returns[at].FirstMovement, weeks.Returns[at].LastMovement),
            _ => (weeks.Moves[at].FirstMovement, weeks.Moves[at].LastMovement),
        };
    }

    // Each account line is one line of one statement, and of its amount.
    private static TakingFault.AtLine? LineFault(Book book, StatementWish wish)
    {
        Dictionary<long, AccountLine> free = AccountLines.Of(book).All.ToDictionary(line => line.Number);
        foreach (long number in book.Weeks.StandingTakings.SelectMany(taking => taking.Lines).SelectMany(line => line.Lines))
        {
            free.Remove(number);
        }

        foreach (LineDecision decision in wish.Lines.Where(decision => !decision.Lines.IsEmpty))
        {
            Money here = Money.Zero(book.Household.Currency);
            foreach (long number in decision.Lines)
            {
                if (!free.Remove(number, out AccountLine? line))
                {
                    return new TakingFault.AtLine(decision.Line, new TakingFault.NoSuchLine(number));
                }

                here += line.Amount;
            }

            if (here != decision.Line.Amount)
            {
                return new TakingFault.AtLine(decision.Line, new TakingFault.OtherAmount(here, decision.Line.Amount));
            }
        }

        return null;
    }

    private static Result<Book> Reconciled(Book book, StatementWish wish, IEnumerable<long> shown)
    {
        Reconciliation? last = book.Weeks.StandingReconciliations.LastOrDefault();
        ReconciliationDraft draft = last is not null && last.Date > wish.Last.To
            ? new ReconciliationDraft(last.Date, last.Balance, [.. shown])
            : new ReconciliationDraft(wish.Last.To, wish.Balance, [.. shown]);
        return ReconciliationPlan.Of(book, draft).Accept();
    }

    private static TakingFault? Fault(Book book, StatementWish wish)
    {
        if (wish.Last.To < book.Household.Start)
        {
            return new TakingFault.BeforeStart(wish.Last.To, book.Household.Start);
        }

        if (IsKnown(book, wish))
        {
            return new TakingFault.AllKnown(wish.Lines.Length);
        }

        return wish.Balance is null && !(book.Weeks.StandingReconciliations.LastOrDefault()?.Date > wish.Last.To) ? new TakingFault.NoBalance(wish.Last.To) : null;
    }

    private static bool IsKnown(Book book, StatementWish wish)
    {
        ImmutableHashSet<long> before = AccountLines.AtBank(book);
        return wish.Lines.All(decision => decision.Line.WasLeft && decision.Target is null or { Use: LineUse.Leave } && decision.Lines.All(before.Contains))
            && TakenLines.Statements(book).Any(known => known.To >= wish.Last.To);
    }
}
