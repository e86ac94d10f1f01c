using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Tests.Made;

/// <summary>Made statements; all names are invented.</summary>
internal static class MadeStatements
{
    public static Currency Euro { get; } = Currency.FromCode("EUR");

    private static readonly string[] Names =
        ["Corner Grocer", "Hillside Water", "Kite & Sons", "Miller's Mill", "\u00D6stra Bageri", "Caf\u00E9 Lumi\u00E8re", "Northlane Rent", "Storage \"Box\" 7", "Ferry; Harbour, Pier 2"];

    /// <summary>Statements of one account with balances that agree.</summary>
    public static Gen<Statement> Any { get; } = OfLines(0, 25);

    /// <summary>Statements with a number of lines.</summary>
    public static Gen<Statement> OfLines(int fewest, int most) =>
        from first in Gen.Int[0, 700]
        from opening in Gen.Long[-500_000, 5_000_000]
        from lines in Line.Array[fewest, most]
        select Of(new LocalDate(2025, 1, 1).PlusDays(first), opening, lines);

    private static Gen<(int Days, long Amount, string Name, string Text)> Line { get; } =
        from days in Gen.Int[0, 5]
        from amount in Gen.Long[1, 300_000]
        from comesIn in Gen.Int[0, 4]
        from name in Gen.OneOf(Names)
        from number in Gen.Int[1, 9999]
        select (days, comesIn == 0 ? amount : -amount, name, $"Order {number} of the month");

    private static Statement Of(LocalDate first, long opening, (int Days, long Amount, string Name, string Text)[] made)
    {
        var lines = ImmutableArray.CreateBuilder<StatementLine>();
        LocalDate day = first;
        long balance = opening;
        foreach ((int days, long amount, string name, string text) in made)
        {
            day = day.PlusDays(days);
            balance += amount;
            lines.Add(new StatementLine(day, Money.FromMinorUnits(amount, Euro))
            {
                ValueDate = day,
                Party = name,
                Text = $"{text} ({lines.Count + 1})",
                BalanceAfter = Money.FromMinorUnits(balance, Euro),
            });
        }

        return new Statement(StatementFormat.Csv, Euro)
        {
            Account = "FI2112345600000785",
            Id = "MADE1",
            Number = 7,
            From = first,
            To = day,
            Opening = new Balance(Money.FromMinorUnits(opening, Euro), first, 0),
            Closing = new Balance(Money.FromMinorUnits(balance, Euro), day, 0),
            Lines = lines.ToImmutable(),
        };
    }
}
