using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Ledgers;

public class EndCourseTests
{
    private static readonly LocalDate First = new(2026, 3, 1);

    private static readonly LedgerEnd Owed = LedgerEnd.InAccount(Purpose.OwedBack(new PotId("food")));

    // Against the rule in its plainest words: sums over all movements up to each day. The end may go below zero.
    [Fact]
    public void OnLeastFromAndDayFor_AnyMovements_AreAsSummedDayByDay() =>
        Gen.Select(Gen.Select(Gen.Int[0, 20], Gen.Int[-9, 9].Where(amount => amount != 0)).Array[0, 12], Gen.Int[-2, 22], Gen.Int[-5, 15], Gen.Int[0, 12]).Sample((moves, from, wanted, never) =>
        {
            Ledger ledger = Ledger.Empty(Dollars).Add([.. moves.Select(move => Move(First.PlusDays(move.Item1), move.Item2))]);
            Movement[] without = [.. ledger.Movements.Take(never)];
            EndCourse course = EndCourse.Without(ledger, Owed, without);
            LocalDate day = First.PlusDays(from);

            Assert.Equal(Held(day), course.On(day));
            Assert.Equal(Least(day), course.LeastFrom(day));
            Assert.Equal(
                Enumerable.Range(0, 60).Select(day.PlusDays).Where(later => Least(later) >= Usd(wanted)).Select(later => (LocalDate?)later).FirstOrDefault(),
                course.DayFor(Usd(wanted), day));

            Money Held(LocalDate date) => Money.Sum(
                ledger.Movements.Skip(never).Where(movement => movement.Date <= date).Select(movement => movement.To == Owed ? movement.Amount : -movement.Amount), Dollars);

            Money Least(LocalDate date) => Enumerable.Range(0, 60).Select(later => Held(date.PlusDays(later))).Aggregate(Money.Min);
        });

    [Fact]
    public void With_MovementsToCome_IsTheCourseOnceTheyAreWritten() =>
        Gen.Select(Gen.Select(Gen.Int[0, 20], Gen.Int[-9, 9].Where(amount => amount != 0)).Array[0, 8], Gen.Int[0, 8], Gen.Int[-2, 22]).Sample((moves, written, from) =>
        {
            Movement[] all = [.. moves.Select(move => Move(First.PlusDays(move.Item1), move.Item2)), Elsewhere(First.PlusDays(from))];
            var ledger = Ledger.Empty(Dollars);
            EndCourse course = EndCourse.With(ledger.Add(all.Take(written)), Owed, [.. all.Skip(written)]);
            var then = EndCourse.Of(ledger.Add(all), Owed);
            LocalDate day = First.PlusDays(from);

            Assert.Equal((then.On(day), then.LeastFrom(day), then.DayFor(Usd(3), day)), (course.On(day), course.LeastFrom(day), course.DayFor(Usd(3), day)));
        });

    // A course that was asked for goes on from there; of a movement that was undone nothing is left.
    [Fact]
    public void Of_AskedForAgainAndAgain_IsAsOfALedgerReadAnew() =>
        Gen.Select(Gen.Select(Gen.Int[0, 20], Gen.Int[-9, 9].Where(amount => amount != 0), Gen.Bool).Array[0, 12], Gen.Int[-2, 22]).Sample((moves, from) =>
        {
            LocalDate day = First.PlusDays(from);
            var ledger = Ledger.Empty(Dollars);
            foreach ((int late, int amount, bool isUndone) in moves)
            {
                _ = EndCourse.Of(ledger, Owed).On(day);
                ledger = ledger.Add([Move(First.PlusDays(late), amount)]);
                ledger = isUndone ? ledger.Add(ledger.Reverse([ledger.Movements.Count], First, "undone").Value) : ledger;
            }

            var course = EndCourse.Of(ledger, Owed);
            var anew = EndCourse.Of(Ledger.Of(Dollars, [.. ledger.Movements]), Owed);
            Assert.Equal((anew.On(day), anew.LeastFrom(day), anew.DayFor(Usd(3), day)), (course.On(day), course.LeastFrom(day), course.DayFor(Usd(3), day)));
        });

    private static Movement Elsewhere(LocalDate date) => new(0, date, LedgerEnd.Opening, LedgerEnd.InAccount(Purpose.Buffer), Usd(100), "elsewhere");

    private static Movement Move(LocalDate date, int amount) => amount > 0
        ? new(0, date, LedgerEnd.Opening, Owed, Usd(amount), "in")
        : new(0, date, Owed, LedgerEnd.SpentFrom(new PotId("food")), Usd(-amount), "out");
}
