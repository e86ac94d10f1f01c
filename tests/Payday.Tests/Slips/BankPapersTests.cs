using System.Collections.Immutable;
using NodaTime;
using Payday.Commands;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Slips;

namespace Payday.Tests.Slips;

public sealed class BankPapersTests
{
    [Theory]
    [InlineData(false, false, "Check the notes before you leave the counter.")]
    [InlineData(true, false, "Take the card, and count the notes before you go.")]
    [InlineData(true, true, "Check the notes before you leave the counter.")] // this once
    public void Slip_OfWhereTheNotesComeFrom_SpeaksToWhoReadsIt(bool machine, bool asksATeller, string caution)
    {
        Household household = DemoCommand.Household();
        household = household with
        {
            Settings = household.Settings with { Bank = machine ? new CashSource.Machine([Money.FromUnits(20, household.Currency)], null) : new CashSource.Teller() },
        };
        var none = ImmutableSortedDictionary<long, int>.Empty;
        var closed = new ClosedPayday(
            new PayPeriod(Samples.Friday, Samples.Friday.PlusDays(6)), 1, 2, [], [], ImmutableSortedDictionary<PotId, Money>.Empty, none.Add(2_000, 3), none, none,
            new RoutineDraft(Samples.Friday) { AsksATeller = asksATeller });

        ImmutableArray<string> lines = SlipLayout.Lay(BankPapers.Slip(household, closed), 58).Lines;

        Assert.EndsWith(caution, string.Join(' ', lines), StringComparison.Ordinal);
        Assert.Equal(machine && !asksATeller, lines.Any(line => line.StartsWith("Ask the machine for 60.00 USD", StringComparison.Ordinal)));
    }
}
