using CsCheck;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Lives;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>What holds for every plan.</summary>
public sealed class NotePlannerPropertyTests
{
    private static readonly Gen<NoteRequest> AnyRequest =
        from seed in Gen.Int[0, 1_000_000]
        from machine in Gen.Bool
        from limit in Gen.Int[0, 400]
        from limited in Gen.Bool
        select WithSource(RandomRequests.Small(seed), machine, limited ? limit : null);

    [Fact]
    public void Plan_AnyRequest_LosesNothing() => AnyRequest.Sample(
        request =>
        {
            NotePlan plan = NotePlanner.Plan(request);
            foreach (PartNotes part in plan.Parts)
            {
                Assert.Equal(part.Amount.MinorUnits, part.Notes.Sum(note => note.Key * note.Value) + part.KeptBack.MinorUnits);
                Assert.False(part.KeptBack.IsNegative);
            }

            foreach (IGrouping<PotId, PartNotes> pot in plan.Parts.GroupBy(part => part.Part.Pot))
            {
                Assert.Equal(pot.Sum(part => part.Part.Amount.MinorUnits), pot.Sum(part => part.Amount.MinorUnits));
            }
        },
        iter: 1_000);

    [Fact]
    public void Plan_AnyRequest_BalancesEveryNote() => AnyRequest.Sample(
        request =>
        {
            NotePlan plan = NotePlanner.Plan(request);
            foreach (long value in request.Notes.Select(note => note.MinorUnits).Union(request.Loose.Values))
            {
                int used = plan.Parts.Sum(part => part.Notes[value]);
                int hand = request.Loose[value];
                Assert.Equal(used, plan.Withdraw[value] + hand - plan.Return[value]);
                Assert.Equal(hand, plan.Reused[value] + plan.Return[value]);
                Assert.False(plan.Withdraw.Values.Contains(value) && plan.Return.Values.Contains(value));
            }
        },
        iter: 1_000);

    [Fact]
    public void Plan_AnyRequest_KeepsWishesOrNamesThem() => AnyRequest.Sample(
        request =>
        {
            NotePlan plan = NotePlanner.Plan(request);
            foreach (PartNotes part in plan.Parts)
            {
                Assert.All(part.Notes.Values, value => Assert.True(value <= (part.Part.Wishes.TopNote?.MinorUnits ?? long.MaxValue)));
                if (PlanRank.Missing(part) > 0)
                {
                    Assert.Contains(plan.Faults, fault => fault.Pot == part.Part.Pot);
                }
            }
        },
        iter: 1_000);

    [Fact]
    public void Plan_Machine_GivesOnlyItsNotesWithinItsLimit() => AnyRequest.Sample(
        request =>
        {
            NotePlan plan = NotePlanner.Plan(request);
            if (request.Source is CashSource.Machine machine)
            {
                Assert.All(plan.Withdraw.Values, value => Assert.Contains(machine.Notes, note => note.MinorUnits == value));
                Assert.True(machine.Limit is not { } limit || plan.WithdrawTotal <= limit);
                Assert.Equal(plan.Faults.Any(fault => fault.Kind == NoteFaultKind.Limit), plan.LimitShort.IsPositive);
            }
        },
        iter: 1_000);

    [Fact]
    public void Plan_SameRequest_GivesTheSamePlan() => AnyRequest.Sample(
        request => Assert.Equal(Text(NotePlanner.Plan(request)), Text(NotePlanner.Plan(request))),
        iter: 300);

    private static NoteRequest WithSource(NoteRequest request, bool machine, int? limit) => !machine
        ? request
        : request with
        {
            Source = new CashSource.Machine(
                [.. request.Notes.Skip(request.Notes.Length / 2)],
                limit is { } units ? Requests.Units(units) : null),

            // Two weeks a pot, so that there is something to move.
            Parts = [.. request.Parts.Select((part, i) => part with { Pot = new($"p{i / 2}"), Name = $"p{i / 2}" })],
        };

    private static string Text(NotePlan plan) =>
        string.Join('|', plan.Parts.Select(part => part.Notes.Text() + part.KeptBack)) + plan.Withdraw.Text() + plan.Return.Text();
}
