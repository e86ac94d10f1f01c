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
        var none = Notes.None;
        var closed = new ClosedPayday(
            new PayPeriod(Samples.Friday, Samples.Friday.PlusDays(6)), 1, 2, [], [], ImmutableSortedDictionary<PotId, Money>.Empty, Notes.Of(2_000, 3), none, none,
            new RoutineDraft(Samples.Friday) { AsksATeller = asksATeller });

        ImmutableArray<string> lines = SlipLayout.Lay(BankPapers.Slip(household, closed), 58).Lines;

        Assert.EndsWith(caution, string.Join(' ', lines), StringComparison.Ordinal);
        Assert.Equal(machine && !asksATeller, lines.Any(line => line.StartsWith("Ask the machine for 60.00 USD", StringComparison.Ordinal)));
    }

    // The demo's slip asks for 60; a machine that gives 40 each time is gone to twice.
    [Fact]
    public void Slip_OfAMachineWithALimit_SaysWhatToPressOnWhichDay()
    {
        Household household = DemoCommand.Household();
        Money twenty = Money.FromUnits(20, household.Currency);
        household = household with { Settings = household.Settings with { Bank = new CashSource.Machine([twenty], twenty * 2) } };
        var food = new ClosedPart(household.Pots.First(pot => pot.Notes.Small is not null).Id, null, Notes.Of(2_000, 3));
        var closed = new ClosedPayday(
            new PayPeriod(Samples.Friday, Samples.Friday.PlusDays(6)), 1, 2, [], [food], ImmutableSortedDictionary<PotId, Money>.Empty, Notes.Of(2_000, 3), Notes.None, Notes.None,
            new RoutineDraft(Samples.Friday));

        string text = string.Join(' ', SlipLayout.Lay(BankPapers.Slip(household, closed), 58).Lines.SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

        Assert.Contains("The machine gives 40.00 USD at most each time, so go 2 times, once a day (a rule of our own):", text, StringComparison.Ordinal);
        Assert.Matches(@"\[ \] \w+ \d+ \w+: press 40\.00 \(2 x 20\) \[ \] \w+ \d+ \w+: press 20\.00 \(1 x 20\)", text);
        Assert.Contains("It gives too few small notes for Food; change some in a shop, or ask a teller.", text, StringComparison.Ordinal);
    }
}
