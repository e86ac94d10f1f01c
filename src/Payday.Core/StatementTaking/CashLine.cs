using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotePlanning;
using Payday.Core.Pots;

namespace Payday.Core.StatementTaking;

/// <summary>A line of the bank's by which cash was fetched or brought, as what the book has for it: a move of cash, or a cash return.</summary>
public static class CashLine
{
    // So many pots at most owe cash back where one return is looked for among them.
    private const int MostPots = 12;

    /// <summary>The notes that a bank would give for an amount: the fewest, of the machine's where that is what the household uses and it can give it, else of all in use.</summary>
    /// <param name="household">The household.</param>
    /// <param name="amount">Above zero.</param>
    /// <returns>The notes; null where none come to it.</returns>
    public static Notes? Fewest(Household household, Money amount)
    {
        ArgumentNullException.ThrowIfNull(household);
        CashSource[] sources = household.Settings.Bank is CashSource.Machine machine ? [machine with { Limit = null }, new CashSource.Teller()] : [new CashSource.Teller()];
        return sources.Select(source => Of(household, amount, source)).FirstOrDefault(notes => notes is not null);
    }

    /// <summary>The purpose in the account that gives cash to a line's end, or gets it from there, where the person names none.</summary>
    /// <param name="book">The book.</param>
    /// <param name="cash">The cash pot, or the loose notes.</param>
    /// <param name="amount">The line's amount.</param>
    public static LedgerEnd UsualOther(Book book, LedgerEnd cash, Money amount)
    {
        ArgumentNullException.ThrowIfNull(book);
        return amount.IsNegative && MoveEnds.CashPot(book, cash) is { } pot && LedgerEnd.InAccount(Purpose.KeptBack(pot.Id)) is var waits && book.Ledger.Balances[waits] >= -amount
            ? waits
            : MoveEnds.Buffer;
    }

    /// <summary>The move that a line of cash is; or why it is none.</summary>
    internal static Result<MoveEntry> Entry(Book book, LineDecision decision, LedgerEnd cash)
    {
        TakenLine line = decision.Line;
        LedgerEnd other = decision.Target!.Other ?? UsualOther(book, cash, line.Amount);
        if (cash is not LedgerEnd.At { Place: Place.Cash } || other is not LedgerEnd.At { Place: Place.Account })
        {
            return Result.Refused<MoveEntry>(new TakingFault.NotThat(decision.Target, line.Amount.IsPositive));
        }

        if (line.Amount.IsPositive)
        {
            return Result.Of(new MoveEntry(line.Date, cash, other, line.Amount, LineWriting.What(line), decision.Notes) { IsAtBank = true });
        }

        // What a machine gave is in its own notes; loose notes are always known, those of a pot may not be.
        Notes? notes = decision.Notes ?? Fewest(book.Household, -line.Amount);
        return notes is null && cash == MoveEnds.Loose
            ? Result.Refused<MoveEntry>(new MoveFault.NotInNotes(-line.Amount))
            : Result.Of(new MoveEntry(line.Date, other, cash, -line.Amount, LineWriting.What(line), notes) { IsAtBank = true });
    }

    /// <summary>The cash return that comes to a line's amount: of all that is owed back, else of the only pots that come to it; or what is owed, where none does.</summary>
    internal static Result<ReturnPlan> Return(Book book, TakenLine line) => ReturnOf(book, line.Amount) is { } plan
        ? Result.Of(plan)
        : Result.Refused<ReturnPlan>(new TakingFault.OtherAmount(ReturnPlan.Of(book, ReturnDraft.AsPlanned).Total, line.Amount));

    /// <summary>The cash return that comes to an amount; null for none, or where several do.</summary>
    /// <param name="book">The book.</param>
    /// <param name="amount">Above zero.</param>
    public static ReturnPlan? ReturnOf(Book book, Money amount)
    {
        ReturnPlan all = ReturnPlan.Of(book, ReturnDraft.AsPlanned);
        PotId[] pots = [.. all.Lines.Select(line => line.Pot.Id)];
        if (pots.Length == 0 || all.Total == amount)
        {
            return pots.Length == 0 ? null : all;
        }

        if (pots.Length > MostPots)
        {
            return null;
        }

        ReturnPlan[] some =
        [
            .. Enumerable.Range(1, (1 << pots.Length) - 1)
                .Where(set => Money.Sum(all.Lines.Where((_, i) => (set & (1 << i)) == 0).Select(line => line.Owes), amount.Currency) == amount)
                .Take(2)
                .Select(set => ReturnPlan.Of(book, new ReturnDraft { Leaves = [.. pots.Where((_, i) => (set & (1 << i)) != 0)] })),
        ];
        return some is [var only] && only.Total == amount ? only : null;
    }

    private static Notes? Of(Household household, Money amount, CashSource source)
    {
        var part = new NotePart(new PotId("cash"), "", null, amount, NoteWishes.None);
        PartNotes made = NotePlanner.Plan(new NoteRequest(household.Settings.Cash.Notes, Notes.None, source, [part])).Parts[0];
        return made.KeptBack.IsZero ? made.Notes : null;
    }
}
