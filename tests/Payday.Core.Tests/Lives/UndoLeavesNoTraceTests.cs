using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Pots;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Lives;

/// <summary>Rule (design, section 4): an undo leaves no trace in any figure, for every date asked about.</summary>
public class UndoLeavesNoTraceTests
{
    private static readonly Household Begun = House with
    {
        Bills = [Bill("Rent", 310, Friday6March, essential: true), Bill("Phone", 30, Friday6March.PlusDays(11))],
        Debts = [.. House.Debts, Debt("Loan", 900, 0.18m, 12, due: 1) with { Schedule = new Schedule.EveryWeeks(1, Friday6March.PlusDays(4)) }],
        Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) },
    };

    [Fact]
    public void Undo_OfAnyKindOfEvent_LeavesAllAnswersAsTheyWere()
    {
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[3, 30], Gen.Int[0, 9]).Sample(
            (seed, days, later) =>
            {
                Book book = Lived(seed, days, out LocalDate today);
                LocalDate to = today.PlusDays(15);
                string before = Answers.Of(book, Friday6March, to);
                AssertSame("a life", Answers.Of(Answers.Without(book), Friday6March, to), before);
                book = AsStored.Of(book, new Random(seed).Next(book.Ledger.Movements.Count + 1));
                AssertSame("a life that was stored", Answers.Of(book, Friday6March, to), before);
                foreach (Doing kind in Doings.All)
                {
                    if (kind.Do(book, new Random(seed), today) is not { } event1)
                    {
                        continue;
                    }

                    Result<Book> undone = event1.Undo(event1.Book, today.PlusDays(later));
                    Assert.True(undone.Ok, $"{kind.Name}: {undone.Fault.Said()}");
                    AssertSound(undone.Value, mayLack: true);
                    string asBefore = event1.Before == book ? before : Answers.Of(event1.Before, Friday6March, to);
                    AssertSame(kind.Name + " undone", asBefore, Answers.Of(undone.Value, Friday6March, to));
                    AssertSame(kind.Name + " undone, traced", Answers.Of(Answers.Without(undone.Value), Friday6March, to), asBefore);
                    Result<Book> again = event1.Again(undone.Value);
                    Assert.True(again.Ok, $"{kind.Name} again: {again.Fault.Said()}");
                    AssertSame(kind.Name + " done again", Answers.Of(event1.Book, Friday6March, to), Answers.Of(again.Value, Friday6March, to));
                }
            },
            iter: 10);
    }

    // So that the property above is about each of them.
    [Fact]
    public void Doings_InSomeLives_AllComeUp()
    {
        HashSet<string> missing = [.. Doings.All.Select(kind => kind.Name)];
        for (int seed = 1; seed <= 200 && missing.Count > 0; seed++)
        {
            Book book = Lived(seed, 3 + (seed % 27), out LocalDate today);
            missing.RemoveWhere(name => Doings.All.Single(kind => kind.Name == name).Do(book, new Random(seed), today) is not null);
        }

        Assert.Empty(missing);
    }

    private static Book Lived(int seed, int days, out LocalDate today)
    {
        // Half of them begin below zero, and with a rent and a wage that change.
        var life = new FiveYears(Book.Begin(seed % 2 == 0 ? Begun : Begun with
        {
            Opening = Begun.Opening with { Account = Usd(-(seed % 1500)) },
            Bills = [Begun.Bills[0] with { Later = Change(seed % 40, 340) }, Begun.Bills[1]],
            Sources = [Begun.Sources[0] with { Later = Change(seed % 25, 1100) }],
            Pots = [.. Begun.Pots.Select(pot => pot.Kind is PotKind.Spending kind ? pot with { Kind = kind with { Later = Change(seed % 30, 45) } } : pot)],
        }), seed);
        today = Friday6March;
        for (int day = 0; day < days; day++)
        {
            today = Friday6March.PlusDays(day);
            life.Live(today, _ => { });
        }

        return life.Book;
    }

    private static LaterAmounts Change(int days, decimal amount) => LaterAmounts.Of(new LaterAmount(Friday6March.PlusDays(days), Usd(amount)));

    // The first line that differs says more than two long texts.
    private static void AssertSame(string what, string expected, string actual)
    {
        string[] left = expected.Split('\n');
        string[] right = actual.Split('\n');
        int at = left.Zip(right).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.True(
            expected == actual,
            $"{what}: {left.Take(at).LastOrDefault(line => line.StartsWith("on ", StringComparison.Ordinal))}\n expected {left.ElementAtOrDefault(at)}\n actual   {right.ElementAtOrDefault(at)}");
    }
}
