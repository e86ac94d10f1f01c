using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>Runs one pot forward over the paydays, each with the fill that its rule asks for: <see cref="PotFills"/>, as the routine has it.</summary>
internal sealed class PotRun
{
    /// <summary>What takes longer isn't looked for.</summary>
    public const int MostYears = 3;

    private readonly Household household;
    private readonly LocalDate today;
    private readonly ImmutableArray<LocalDate> paydays;

    /// <param name="book">The book.</param>
    /// <param name="today">The payday after which it begins.</param>
    public PotRun(Book book, LocalDate today)
    {
        (household, this.today) = (book.Household, today);
        paydays =
        [
            .. household.Paydays.Between(today.PlusDays(1), today.PlusYears(MostYears))
                .Select(payday => payday.Date),
        ];
    }

    /// <summary>What was put in a pot and isn't there any more: a ladder counts it.</summary>
    public static Money PutInOutside(Balances balances, PotId pot) => balances[LedgerEnd.SpentFrom(pot)] + balances[LedgerEnd.MissedIn(pot)];

    /// <summary>What a pot that fills up lacks, zero or more.</summary>
    /// <param name="pot">A sinking pot, a ladder or a reserve.</param>
    /// <param name="by">Of a sinking pot the date that it saves for.</param>
    /// <param name="has">What it has.</param>
    /// <param name="outside">What was put in and isn't there any more.</param>
    /// <param name="day">The day.</param>
    public static Money Lacks(Pot pot, LocalDate? by, Money has, Money outside, LocalDate day) => (pot.Kind switch
    {
        PotKind.Sinking sinking => sinking.TargetBy(by!.Value) - has,
        PotKind.Reserve reserve => reserve.LevelOn(day) - has,
        PotKind.Ladder ladder => LadderSteps.SumOf(ladder, ladder.Steps) - has - outside,
        _ => throw new ArgumentOutOfRangeException(nameof(pot)),
    }).ClampToZero();

    /// <summary>Runs it until it is full, past its date, or for three years.</summary>
    /// <param name="pot">A sinking pot that saves, a ladder or a reserve.</param>
    /// <param name="by">Of a sinking pot the date that it saves for.</param>
    /// <param name="has">What it has once today's payday has filled it.</param>
    /// <param name="outside">What was put in and isn't there any more.</param>
    public PotRunEnd On(Pot pot, LocalDate? by, Money has, Money outside)
    {
        // How many there are before its date: what it lacks is spread over those that are left of them.
        int before = by is { } date ? Before(date) : 0;
        Money next = paydays.IsEmpty ? Money.Zero(has.Currency) : Fill(0);
        if (Lacks(pot, by, has, outside, today).IsZero)
        {
            return new PotRunEnd(today, next);
        }

        for (int i = 0; i < paydays.Length && !(paydays[i] >= by); i++)
        {
            has += Fill(i);
            if (Lacks(pot, by, has, outside, paydays[i]).IsZero)
            {
                return new PotRunEnd(paydays[i], next);
            }
        }

        return new PotRunEnd(null, next);

        Money Fill(int payday) => FillOn(
            household, pot, paydays[payday], has, outside, by is { } until ? (until, Math.Max(before - payday, 0)) : null);

        int Before(LocalDate day)
        {
            int at = paydays.BinarySearch(day);
            return at < 0 ? ~at : at;
        }
    }

    /// <summary>What the rule of a pot asks for on a payday.</summary>
    /// <param name="household">The household.</param>
    /// <param name="pot">A sinking pot that saves, a ladder or a reserve.</param>
    /// <param name="payday">The payday.</param>
    /// <param name="has">What it has before.</param>
    /// <param name="outside">What was put in and isn't there any more.</param>
    /// <param name="until">Of a sinking pot its date, and how many paydays there are before that from this one on.</param>
    public static Money FillOn(
        Household household, Pot pot, LocalDate payday, Money has, Money outside, (LocalDate By, int Paydays)? until) => PotFills.Propose(pot, new PotFacts(
        has,
        has + outside,
        [],
        payday,
        [],
        household.Start,
        until is { By: var by } ? new SinkingState(SinkingStage.Saving, by, Money.Zero(has.Currency)) : null,
        until?.Paydays ?? 0,
        PotUnit.Of(pot, household.Settings.Cash),
        household.Settings.Numbers)).Amount;
}

/// <summary>How a pot's run ends.</summary>
/// <param name="Full">The payday on which it is full; null where it isn't in time.</param>
/// <param name="Next">What the payday after today's puts in.</param>
internal readonly record struct PotRunEnd(LocalDate? Full, Money Next);
