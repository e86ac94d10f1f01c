using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Matching;

/// <summary>
/// Made accounts: account lines, and what a bank would show of them: days later, with texts of its own, some missing, some that nobody
/// entered, amounts that come up often. All names are invented.
/// </summary>
internal static class MadeAccounts
{
    private static readonly string[] Shops = ["Corner Grocer", "Miller's Mill", "Kite Toys", "Pier Kiosk", "Dale Pharmacy", "Lumiere Cafe", "Harbour Fuel", "Box Books"];
    private static readonly string[] Bills = ["Northlane Rent", "Hillside Water", "Brightwire Power", "Farnet Internet", "Storage Locker"];

    /// <summary>Lines, entries, and which line is which entry.</summary>
    public static (List<StatementLine> Lines, List<AccountLine> Entries, Dictionary<StatementLine, AccountLine> Truth) Make(int seed, int count)
    {
        var random = new Random(seed);
        var entries = new List<AccountLine>();
        var truth = new List<(StatementLine Line, AccountLine? Entry)>();
        var first = new LocalDate(2026, 1, 1);
        for (int i = 0; i < count; i++)
        {
            LocalDate day = first.PlusDays((i / 2) + random.Next(3));
            int kind = random.Next(10);
            (string name, long amount, AccountLineKind entryKind, LineKind lineKind) = kind switch
            {
                0 => (Bills[random.Next(Bills.Length)], -(2000L + (500 * random.Next(60))), AccountLineKind.Bill, LineKind.DirectDebit),
                1 => ("Cash", -(2000L * random.Next(1, 10)), AccountLineKind.Withdrawal, LineKind.Cash),
                2 => ("Wage", 120_000L + random.Next(3000), AccountLineKind.Income, LineKind.Other),
                _ => (Shops[random.Next(Shops.Length)], random.Next(3) == 0 ? -500L * random.Next(1, 9) : -random.Next(150, 9000), AccountLineKind.CardPurchase, random.Next(2) == 0 ? LineKind.Card : LineKind.Other),
            };
            var entry = new AccountLine(i + 1, day, amount, name, entryKind);
            var line = new StatementLine(day.PlusDays(random.Next(10) == 0 ? random.Next(3, 5) : random.Next(3)), Money.FromMinorUnits(amount, MadeStatements.Euro))
            {
                Kind = lineKind,
                Party = random.Next(4) == 0 ? "" : $"{name.ToUpperInvariant()} {random.Next(1000, 9999)} PIER",
                Text = $"CARD {random.Next(1000, 9999)} REF {random.Next()}",
            };
            int fate = random.Next(20);
            if (fate > 0)
            {
                truth.Add((line, fate == 1 ? null : entry));
            }

            if (fate != 1)
            {
                entries.Add(entry);
            }
        }

        List<StatementLine> lines = [.. truth.OrderBy(pair => pair.Line.Date).Select(pair => pair.Line)];
        return (lines, entries, truth.Where(pair => pair.Entry is not null).ToDictionary(pair => pair.Line, pair => pair.Entry!, ReferenceEqualityComparer.Instance));
    }

    private sealed class ReferenceEqualityComparer : IEqualityComparer<StatementLine>
    {
        public static ReferenceEqualityComparer Instance { get; } = new();

        public bool Equals(StatementLine? x, StatementLine? y) => ReferenceEquals(x, y);

        public int GetHashCode(StatementLine obj) => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj);
    }
}
