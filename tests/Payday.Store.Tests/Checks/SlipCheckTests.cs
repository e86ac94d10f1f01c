using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Routines;
using Payday.Store.Checks;
using Payday.Store.HouseholdFiles;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Checks;

/// <summary>On the demo household, with payday after payday closed as they come.</summary>
public sealed class SlipCheckTests
{
    private static readonly Lazy<Book> ThreeClosed = new(() => Enumerable.Range(0, 3).Aggregate(
        Book.Begin(HouseholdFile.Read(DemoFile.Text).Value!),
        (book, _) => Closing.Of(Routine.Plan(book, Routine.Begun(book, null).Value!).Value!).Value!));

    [Fact]
    public void Of_PaydaysAsClosed_FindsNothing()
    {
        Assert.Equal(3, ThreeClosed.Value.Closed.Length);
        Assert.All(ThreeClosed.Value.Closed, closed => Assert.NotEmpty(closed.Parts));
        Assert.Empty(SlipCheck.Of(ThreeClosed.Value));
    }

    [Fact]
    public void Of_NotesOfTwoPotsSwapped_NamesBothThoughTheTotalsAgree()
    {
        ClosedPayday second = ThreeClosed.Value.Closed[1];
        int other = second.Parts.ToList().FindIndex(part => part.PotId != second.Parts[0].PotId && !part.Notes.SequenceEqual(second.Parts[0].Notes));
        ImmutableArray<ClosedPart> parts = second.Parts
            .SetItem(0, second.Parts[0] with { Notes = second.Parts[other].Notes })
            .SetItem(other, second.Parts[other] with { Notes = second.Parts[0].Notes });

        Finding[] findings = [.. SlipCheck.Of(With(1, second with { Parts = parts }))];

        Assert.Equal(2, findings.Length);
        Assert.All(findings, finding => Assert.StartsWith("The filling sheet of 2026-03-20 puts ", finding.Said(), StringComparison.Ordinal));
        Assert.All(findings, finding => Assert.Equal((CheckPart.Slips, (FindingSince)new FindingSince.Payday(new(2026, 3, 20))), (finding.Part, finding.Since!)));
    }

    [Fact]
    public void Of_PartGone_NamesItsPotAndTheTotals()
    {
        ClosedPayday first = ThreeClosed.Value.Closed[0];
        ClosedPart gone = first.Parts.First(part => part.Notes.Pieces > 0);

        string[] found = [.. SlipCheck.Of(With(0, first with { Parts = first.Parts.Remove(gone) })).Select(finding => finding.Said())];

        string pot = ThreeClosed.Value.Household.Pots.Single(pot => pot.Id == gone.PotId).Name;
        Assert.Collection(
            found,
            totals => Assert.Contains("went into the pots.", totals, StringComparison.Ordinal),
            part => Assert.Contains($" into {pot}, but the ledger moved ", part, StringComparison.Ordinal));
    }

    [Fact]
    public void Of_MovementsOfAnotherPayday_NamesEachPotThatGotSomethingElse() =>
        Assert.NotEmpty(SlipCheck.Of(With(2, ThreeClosed.Value.Closed[2] with { FirstMovement = ThreeClosed.Value.Closed[2].LastMovement })));

    [Theory]
    [InlineData(0, 5)]
    [InlineData(7, 5)]
    [InlineData(1, 100_000)]
    public void Of_MovementsThatAreNone_SaysSoAndNothingElse(long first, long last) =>
        Assert.Equal(
            $"The payday of 2026-03-06 names ledger lines {first} to {last}, which are none.",
            Assert.Single(SlipCheck.Of(With(0, ThreeClosed.Value.Closed[0] with { FirstMovement = first, LastMovement = last }))).Said());

    private static Book With(int index, ClosedPayday closed) =>
        ThreeClosed.Value with { Closed = ThreeClosed.Value.Closed.SetItem(index, closed) };
}
