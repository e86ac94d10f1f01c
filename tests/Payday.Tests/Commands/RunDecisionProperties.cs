using System.Globalization;
using CsCheck;

namespace Payday.Tests.Commands;

/// <summary>Any decisions of a routine, from the shell.</summary>
public sealed class RunDecisionProperties
{
    private static readonly Gen<string> Amounts = Gen.Frequency(
        (6, Gen.Int[0, 30000].Select(cents => (cents / 100m).ToString("0.00", CultureInfo.InvariantCulture))),
        (2, One("0", "0.01", "5000", "12.50+3")),
        (1, Gen.Const("usual")));

    // In the order of the routine, in which they are taken however they are given.
    private static readonly Gen<string[]>[] Steps =
    [
        Named("--income", ["Odette, joinery"], Amounts),
        Named("--one-off", ["Cake sale", "Gift"], One("0", "15.50", "300")),
        Amounts.Select(amount => (string[])["--buffer", amount]),
        Named("--bill", ["Phones", "Fiddle lessons", "After-school club@2026-03-16"], Amounts),
        One<string[]>(["--paid", "Phones"], ["--paid", "Sofa card"], ["--paid", "After-school club=2026-03-09"], ["--unpaid", "Car loan"]),
        One<string[]>(["--set-asides", "when-due"], ["--set-asides", "even"], ["--set-asides", "usual"]),
        Named("--debt", ["Sofa card", "Car loan"], Amounts),
        Named("--pot", ["Food", "Fares", "Reserve", "Step ladder", "Car repairs"], Amounts),
        Gen.Frequency((3, Named("--place", ["Reserve", "Sofa card", "Food", "buffer", "Rent"], Gen.Frequency((3, Amounts), (1, Gen.Const("rest"))))), (1, One<string[]>(["--place", "none"], ["--place", "usual"]))),
        One<string[]>(["--teller"], ["--machine", "20 50 / 500"], ["--machine", "10 20"], ["--bank", "usual"]),
        One<string[]>(["--loose", "keep"], ["--loose", "use"]),
        One<string[]>(["--notes", "Food@2026-03-13=20=4,10=2"], ["--notes", "Fuel@2026-03-06=20=2"], ["--notes", "usual"]),
    ];

    private static readonly Gen<string[][]> Decisions =
        Gen.Select(Gen.Int[1, 6], Gen.Shuffle(Enumerable.Range(0, Steps.Length).ToArray()))
            .SelectMany((count, order) => Each([.. order.Take(count).Order()]));

    [Fact]
    public void Decisions_KeptOneByOneOrGivenAtOnce_AreTheSameRoutineAndTakenBackLeaveNothing() => Decisions.Sample(
        decisions =>
        {
            using TestShell kept = TestShell.WithDemo();
            using TestShell atOnce = TestShell.WithDemo();
            string before = Book(atOnce);

            bool allKept = decisions.All(decision => kept.Run(["run", .. decision, "--keep"]).Exit == 0);
            Ran given = atOnce.Run(["run", .. decisions.SelectMany(words => words), "--keep"]);

            Assert.Equal(allKept, given.Exit == 0);
            if (!allKept)
            {
                Assert.Equal(before, Book(atOnce));
                return;
            }

            Assert.Equal(kept.Run("run", "--json").Fine().Out, atOnce.Run("run", "--json").Fine().Out);
            Ran closed = kept.Run("run", "--accept");
            Assert.Equal(closed.Exit, atOnce.Run("run", "--accept").Exit);
            Assert.Equal(Book(kept), Book(atOnce));
            Assert.Equal("Nothing is wrong.", kept.Run("check").Fine().Lines[^1]);
            if (closed.Exit == 0)
            {
                kept.Run("reopen", "--drop").Fine();
            }

            kept.Run("run", "--anew", "--keep").Fine();
            Assert.Equal(before, Book(kept));
        },
        iter: 30);

    private static Gen<T> One<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);

    private static Gen<string[]> Named(string option, string[] names, Gen<string> values) =>
        Gen.Select(One(names), values, (name, value) => (string[])[option, $"{name}={value}"]);

    private static Gen<string[][]> Each(int[] steps) =>
        steps.Aggregate(Gen.Const(Array.Empty<string[]>()), (all, step) => Gen.Select(all, Steps[step], (before, next) => (string[][])[.. before, next]));

    private static string Book(TestShell shell) => string.Join('\n', ((string[][])
        [["show", "--json"], ["show", "bills", "--json"], ["show", "debts", "--json"], ["show", "pots", "--json"], ["fill", "--json"], ["due", "--json"], ["run", "--json"]])
        .Select(line => shell.Run(line).Out));
}
