using System.Collections.Immutable;
using CsCheck;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>Whatever the notes are, there is a plan, and it is right; if need be it says that it isn't proven.</summary>
public sealed class NotePlannerOddTests
{
    private static readonly Gen<int> Seeds = Gen.Int[0, 1_000_000];

    [Fact]
    public void Plan_AnyNoteValues_IsMadeAndRight() => Seeds.Sample(seed => Audit(OddRequests.Of(seed)), iter: 500);

    [Fact]
    public void Plan_HundredsOfNotesAtHomeAndAMachine_IsMadeAndRight() => Seeds.Sample(seed => Audit(OddRequests.MuchAtHome(seed)), iter: 100);

    [Fact]
    public void Plan_ValuesBeyondReason_IsMadeAndRight() => Seeds.Sample(seed => Audit(OddRequests.Huge(seed)), iter: 150);

    // It ended in a fault: notes at home worth more than 64 bits hold.
    [Fact]
    public void Plan_NotesAtHomeBeyondAnyAmount_IsMadeAndRight() => Audit(OddRequests.Huge(698_446));

    // It ended in a fault: a plan that was within the machine's limit was made anew once the work allowed was spent, and was beyond it then.
    [Fact]
    public void Plan_MoreWorkThanIsAllowedWithinALimit_IsMadeAndRight() => Audit(OddRequests.MuchAtHome(919_524));

    // It ended in a fault: notes at home in so many ways that the list of them held none that leaves them to others.
    [Fact]
    public void Plan_NotesAtHomeInMoreWaysThanAreListed_IsMadeAndRight() => Audit(Odd(
        [539_87, 39_28, 1_27, 43, 7, 5, 4, 3], [39_28, 43, 7, 5, 4, 3], null, [(3, 46), (4, 26), (1_27, 11)], 445_00, 445_00, 55_00, 55_00, 115_00, 115_00));

    // It went on without end: each cent less that a limit might allow was planned anew.
    [Fact]
    public void Plan_LimitAndValuesOfCents_IsMadeAndRight() => Audit(Odd(
        [140_12, 115_50, 18_16, 25, 4], [140_12, 115_50, 25, 4], 1802_17, [(18_16, 358), (115_50, 228)], 1130_93, 1130_93, 1130_93, 178_52, 178_52));

    [Fact]
    public void Plan_MixedNotesAtHome_GivesTheOddRestsToThoseWhoNeedThem()
    {
        // 24 parts of 85.00 from a machine that gives twenties and fifties: each needs a five, and 30 are at home.
        ImmutableArray<NotePart> parts = [.. Enumerable.Range(0, 24).Select(i => Part($"p{i}", 85))];
        NotePlan plan = NotePlanner.Plan(new NoteRequest(
            Notes(100, 50, 20, 10, 5, 1), Loose((5, 30), (10, 240), (1, 37), (2, 11)), new CashSource.Machine(Notes(50, 20), null), parts));

        Assert.Equal(Money.Zero(Usd), plan.KeptBack());
    }

    // The search that is bounded by its work, alone, against plans that are proven.
    [Fact]
    public void Solve_OneByOne_IsNeverBetterThanWhatIsProven() => Seeds.Sample(
        seed =>
        {
            NoteRequest request = RandomRequests.Small(seed);
            NotePlan proven = NotePlanner.Plan(request);
            long[] amounts = [.. request.Parts.Select(part => part.Amount.MinorUnits)];
            SolvedNotes solved = new ProblemMaker(request, [.. request.Fetched.Select(note => note.MinorUnits)])
                .Solve(amounts, new Effort(0));
            NotePlan alone = PlanMaker.Make(request, solved, amounts, new bool[amounts.Length], Money.Zero(Usd));

            Assert.Null(PlanAudit.Fault(request, alone));
            Assert.True(!proven.Proven || Order(PlanRank.Of(proven)).CompareTo(Order(PlanRank.Of(alone))) <= 0);
        },
        iter: 500);

    private static (long, long, long, long) Order(PlanRank rank) => (rank.SmallMoneyMissing, rank.KeptBack, rank.Withdrawn, rank.Notes);

    private static NoteRequest Odd(
        long[] notes, long[] machine, long? limit, (long Cents, int Count)[] hand, params long[] amounts) => new(
        [.. notes.Select(Cents)],
        Core.Cash.Notes.Of(hand),
        new CashSource.Machine([.. machine.Select(Cents)], limit is { } cents ? Cents(cents) : null),
        [.. amounts.Select((amount, i) => Part($"p{i}", 0) with { Amount = Cents(amount) })]);

    private static Money Cents(long cents) => Money.FromMinorUnits(cents, Usd);

    private static void Audit(NoteRequest request) => Assert.Null(PlanAudit.Fault(request, NotePlanner.Plan(request)));
}
