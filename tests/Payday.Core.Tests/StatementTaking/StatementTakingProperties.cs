using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Reconciling;
using Payday.Core.StatementTaking;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.StatementTaking;

/// <summary>Statements that a model of the bank sends of random lives, some days late, with a fee and lines that nobody knows.</summary>
public class StatementTakingProperties
{
    private static readonly Household Living = House with
    {
        Bills = [Bill("Rent", 310, Friday6March, essential: true), Bill("Power", 45.99m, new LocalDate(2026, 3, 20))],
        Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) },
    };

    [Fact]
    public void Taken_OfRandomLives_IsRightOrNotAtAll_AndUndoneLeavesNoTrace() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 70]).Sample(
        (seed, days) =>
        {
            (Book book, BankModel bank, LocalDate today) = Lived(seed, days);
            (Statement statement, BankLine[] shown) = Sent(book, bank, seed, today);
            StatementPlan plan = Planned(book, [statement], today);

            // Each line once, and what is matched is that very amount, about then, by that name; of two dues of one bill either may be meant.
            Assert.Equal(statement.Lines.Length, plan.Lines.Length);
            Assert.Equal(plan.Matched.Count(), plan.Matched.Select(Of).Select(line => line.Number).Distinct().Count());
            foreach (PlannedLine line in plan.Matched)
            {
                AccountLine here = Of(line);
                Assert.Equal(line.Line.Amount, here.Amount);
                Assert.True(
                    here.Other.Key.EndsWith(":" + line.Line.Text, StringComparison.OrdinalIgnoreCase) || here.Other.Key.EndsWith("/" + line.Line.Text, StringComparison.OrdinalIgnoreCase)
                        || shown.Any(sent => sent.Amount == here.Amount && sent.Date == here.Date && string.Equals(sent.Text, line.Line.Text, StringComparison.OrdinalIgnoreCase)),
                    $"{line.Line.Date} {line.Line.Amount} {line.Line.Text} is not {here.Date} {here.Kind} {here.Other.Key} {here.What}; there were {string.Join(", ", shown.Where(sent => sent.Amount == here.Amount))}");
            }

            Result<Book> taken = plan.Taken(today);
            Assert.True(taken.Ok, taken.Fault.Said());
            AssertSound(taken.Value, mayLack: true);
            TakingOfStatements taking = taken.Value.Weeks.Takings[^1];
            Money left = Money.Sum(taking.Lines.Where(line => line.IsLeft).Select(line => line.Amount), Dollars);
            Assert.Equal(left, taken.Value.Weeks.Reconciliations[^1].Difference);
            Assert.Contains(taking.Lines, line => line.Wrote is not null);

            // The same again changes nothing: what was left is there to be taken, and nothing else.
            StatementPlan again = Planned(taken.Value, [statement], today);
            Assert.All(again.Lines, line => Assert.True(line.WasLeft));
            Assert.Equal(taking.Lines.Count(line => line.IsLeft), again.Lines.Length);

            string before = Answers.Of(book, Friday6March, today.PlusDays(5));
            Result<Book> undone = TakingUndo.Of(taken.Value, taking, today);
            Assert.True(undone.Ok, undone.Fault.Said());
            Assert.Equal(before, Answers.Of(undone.Value, Friday6March, today.PlusDays(5)));
            Assert.Equal(Planned(book, [statement], today).Matched.Count(), Planned(undone.Value, [statement], today).Matched.Count());
        },
        iter: 20);

    // So that the property above isn't true of nothing: nearly all lines find their partner.
    [Fact]
    public void Matched_InSomeLives_IsNearlyAll()
    {
        int all = 0;
        int matched = 0;
        for (int seed = 1; seed <= 20; seed++)
        {
            (Book book, BankModel bank, LocalDate today) = Lived(seed, 40);
            (Statement statement, _) = Sent(book, bank, seed, today);
            StatementPlan plan = Planned(book, [statement], today);
            all += statement.Lines.Length - 2;
            matched += plan.Matched.Count();
        }

        Assert.True(matched * 100 >= all * 90, $"{matched} of {all}");
    }

    // Whatever the order in which they come, and however they overlap.
    [Fact]
    public void Taken_InAnyOrder_ComesToTheSame() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[30, 90], Gen.Int[1, 100]).Sample(
        (seed, days, order) =>
        {
            (Book book, BankModel bank, LocalDate today) = Lived(seed, days);
            (Statement whole, _) = Sent(book, bank, seed, today);
            Statement[] parts = [.. Cut(whole, 3)];
            Book atOnce = Take(book, [whole], today);
            Book one = parts.Aggregate(book, (to, part) => Take(to, [part], today));
            Book other = parts.OrderBy(part => (part.From!.Value.DayOfYear * order) % 7).Aggregate(book, (to, part) => Take(to, [part], today));
            Assert.Equal(Known(one), Known(other));
            Assert.Equal(Known(atOnce).Order(StringComparer.Ordinal), Known(one).Order(StringComparer.Ordinal));
            Assert.Equal(atOnce.Ledger.Balances.In(Place.Account), other.Ledger.Balances.In(Place.Account));
        },
        iter: 10);

    private static string[] Known(Book book) => [.. TakenLines.Of(book).Select(line => $"{line.Date} {line.Amount} {line.Text}").Order(StringComparer.Ordinal)];

    private static Book Take(Book book, Statement[] statements, LocalDate today)
    {
        StatementPlan plan = Planned(book, statements, today);
        Result<Book> taken = plan.Taken(today);

        // Where the buffer has too little for the fee it is left.
        if (taken.Fault is TakingFault.AtLine { Line.Text: "ACCOUNT FEE", Why: EntryFault.HasLess })
        {
            taken = plan.With(plan.Others.Single(line => line.Line.Text == "ACCOUNT FEE").Key, new Proposal(LineTarget.Leave, ProposalReason.Chosen, true)).Taken(today);
        }

        Assert.True(taken.Ok || taken.Fault is TakingFault.AllKnown, taken.Fault.Said());
        return taken.Ok ? taken.Value : book;
    }

    private static IEnumerable<Statement> Cut(Statement whole, int parts)
    {
        int days = Period.DaysBetween(whole.From!.Value, whole.To!.Value) + 1;
        Money balance = whole.Opening!.Amount;
        for (int i = 0; i < parts; i++)
        {
            LocalDate from = whole.From.Value.PlusDays(days * i / parts);
            LocalDate to = i == parts - 1 ? whole.To.Value : whole.From.Value.PlusDays((days * (i + 1) / parts) - 1);
            ImmutableArray<StatementLine> lines = [.. whole.Lines.Where(line => line.Date >= from && line.Date <= to)];
            Money closing = balance + Money.Sum(lines.Select(line => line.Amount), Dollars);
            yield return whole with { From = from, To = to, Lines = lines, Opening = new Balance(balance, from, 1), Closing = new Balance(closing, to, 1) };
            balance = closing;
        }
    }

    private static AccountLine Of(PlannedLine line) => Assert.IsType<Partner.Entered>(Assert.Single(line.Partners)).Line;

    private static StatementPlan Planned(Book book, Statement[] statements, LocalDate today)
    {
        Result<StatementPlan> plan = StatementPlan.Of(book, statements, new PlanOptions(), today);
        Assert.True(plan.Ok, plan.Fault.Said());
        return plan.Value;
    }

    private static (Book Book, BankModel Bank, LocalDate Today) Lived(int seed, int days)
    {
        var life = new FiveYears(Book.Begin(Living), seed);
        var bank = new BankModel(life.Book);
        LocalDate today = Friday6March;
        for (int day = 0; day < days; day++)
        {
            today = Friday6March.PlusDays(day);
            life.Live(today, bank.See);
        }

        return (life.Book, bank, today);
    }

    // All that has happened is shown up to three days later, what would be shown after the end not yet; with a fee, and something that nobody knows.
    // What the book has on another day, as its money wasn't there, is on its way still: only the day and the amount tell whose it is.
    private static (Statement Statement, BankLine[] Shown) Sent(Book book, BankModel bank, int seed, LocalDate today)
    {
        var chance = new Random(seed);
        HashSet<(LocalDate, Money)> here = [.. AccountLines.Of(book).All.Select(line => (line.Date, line.Amount))];
        (BankLine Sent, LocalDate Shown)[] dated =
        [
            .. bank.Lines.Where(line => here.Contains((line.Date, line.Amount))).Select(line => (line, LocalDate.Max(line.Date, Friday6March).PlusDays(chance.Next(4)))).Where(pair => pair.Item2 <= today),
        ];
        ImmutableArray<StatementLine> lines =
        [
            .. dated.Select(pair => new StatementLine(pair.Shown, pair.Sent.Amount) { Text = pair.Sent.Text, Kind = pair.Sent.Text is "CASH 0815" or "DEPOSIT" ? LineKind.Cash : LineKind.Other })
                .Append(new StatementLine(today, Usd(-2.5m)) { Text = "ACCOUNT FEE", Kind = LineKind.Fee })
                .Append(new StatementLine(today, Usd(-1234.56m)) { Text = "ZORBLATT" })
                .OrderBy(line => line.Date),
        ];
        Money closing = Living.Opening.Account + Money.Sum(lines.Select(line => line.Amount), Dollars);
        return (
            new Statement(StatementFormat.Camt053, Dollars)
            {
                Account = "77",
                From = Friday6March,
                To = today,
                Lines = lines,
                Opening = new Balance(Living.Opening.Account, Friday6March, 1),
                Closing = new Balance(closing, today, 1),
            },
            [.. dated.Select(pair => pair.Sent)]);
    }
}
