using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;

namespace Payday.Core.Routines;

/// <summary>
/// Where a cash return and a withdrawal meet: the owed-back notes can go straight into pots, instead of being carried to
/// the bank and others back from it.
/// </summary>
/// <param name="Notes">By value in minor units: the owed-back notes that are known and can be pulled without a swap.</param>
/// <param name="Apart">Both trips made: all owed-back notes are taken there, all notes of the withdrawal fetched.</param>
/// <param name="Together">The owed-back notes used for the pots, as far as they fit.</param>
public sealed record OwedBackOffer(Notes Notes, BankTrip Apart, BankTrip Together)
{
    /// <summary>The offer for a routine, both ways worked out; null where no owed-back notes are known.</summary>
    public static OwedBackOffer? Of(RoutinePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<ReturnedPot> usable = Usable(plan.Book, plan.Period.First);
        return usable.IsEmpty ? null : new OwedBackOffer(
            Sum(usable),
            Trip(Routine.Plan(plan.Book, plan.Draft with { UsesOwedBack = false }).Value!, usable),
            Trip(Routine.Plan(plan.Book, plan.Draft with { UsesOwedBack = true }).Value!, usable));
    }

    /// <summary>The owed-back notes that a payday can use.</summary>
    internal static ImmutableArray<ReturnedPot> Usable(Book book, LocalDate payday) =>
    [
        .. ReturnPlan.Of(book, ReturnDraft.AsPlanned).Lines
            .Where(line => line.Way == ReturnWay.Pull
                && PotNotes.AreSeen(book, line.Pot)
                && EndCourse.Of(book.Ledger, LedgerEnd.InCash(Purpose.OwedBack(line.Pot.Id))).LeastFrom(payday) >= line.Owes)
            .Select(line => new ReturnedPot(line.Pot.Id, line.Owes, line.Notes)),
    ];

    /// <summary>All notes of some pots.</summary>
    internal static Notes Sum(IEnumerable<ReturnedPot> pots) =>
        Notes.Sum(pots.Select(pot => pot.Notes).OfType<Notes>());

    private static BankTrip Trip(RoutinePlan plan, ImmutableArray<ReturnedPot> usable)
    {
        Notes taken = Sum(usable).Less(Sum(plan.Withdrawal.OwedBackReused));
        return new BankTrip(taken.Pieces + plan.Withdrawal.Plan.Withdraw.Pieces, plan.Withdrawal.Plan.WithdrawTotal);
    }
}

/// <summary>What a trip to the bank comes to.</summary>
/// <param name="NotesCarried">How many notes, there and back.</param>
/// <param name="Withdrawn">The value withdrawn.</param>
public sealed record BankTrip(int NotesCarried, Money Withdrawn);
