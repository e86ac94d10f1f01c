using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.NotePlanning;
using Payday.Core.Tests.Faults;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.NotePlanning.Requests;

namespace Payday.Core.Tests.NotePlanning;

/// <summary>What is said of wishes is so, and what is advised helps.</summary>
public sealed class NoteFaultTests
{
    [Fact]
    public void Plan_TopNoteMetByNotesAtHome_IsNotNamedForCentsThatNoNoteMakes()
    {
        NotePart part = Part("food", 0, top: 5) with { Amount = Money.FromMinorUnits(85_37, Usd) };
        NotePlan plan = NotePlanner.Plan(Machine([20], part) with { Loose = Loose((5, 20)) });

        Assert.Equal(Money.FromMinorUnits(37, Usd), plan.KeptBack());
        Assert.Empty(plan.Faults);
    }

    [Theory]
    [InlineData(15, 5, 20, "lower its small money or raise its amount to 20.00")] // three fives are all it can have
    [InlineData(85, 2, 10, "lower its small money")] // no amount gives it a note so small
    [InlineData(18, 10, 19, "lower its small money or raise its amount to 20.00")] // 19 in small notes are 20
    public void Sentence_SmallMoney_AdvisesAnAmountOnlyWhereItHelps(long amount, long note, long atLeast, string advice) =>
        Assert.EndsWith($"; {advice}.", Said(Teller(Notes(100, 50, 20, 10, 5), Part("food", amount, small: (note, atLeast)))), StringComparison.Ordinal);

    [Theory]
    [InlineData(90, 10, 20, "lower its small money or ask a teller")]
    [InlineData(90, 2, 10, "lower its small money")] // neither has it
    public void Sentence_SmallMoneyAtAMachine_SendsToATellerWhereThatHelps(long amount, long note, long atLeast, string advice) =>
        Assert.EndsWith($"; {advice}.", Said(Machine([50, 20], Part("food", amount, small: (note, atLeast)))), StringComparison.Ordinal);

    [Fact]
    public void Sentence_SmallMoneyWhereWeeksAreJoined_SendsToNoTellerWhoDoesNotJoinThem()
    {
        NotePart week = Part("food", 5, small: (7, 1)) with { Week = new LocalDate(2026, 1, 2) };
        NotePlan plan = NotePlanner.Plan(Teller(Notes(10, 7), week, week with { Week = new LocalDate(2026, 1, 9) }) with { Source = new CashSource.Machine(Notes(10), null) });

        Assert.Contains(Units(10), plan.Parts.Select(part => part.Amount));
        Assert.EndsWith("; lower its small money.", Assert.Single(plan.Faults).Said(NumberStyle.CommaPoint), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(90, 10, "raise its top note, ask a teller or keep it in the account")]
    [InlineData(90, 2, "raise its top note or keep it in the account")]
    [InlineData(15, 10, "ask a teller or keep it in the account")] // no twenty is in 15
    public void Sentence_TopNoteAtAMachine_AdvisesWhatHelps(long amount, long top, string advice) => Assert.EndsWith(
        $"; {advice}.", Said(Machine([50, 20], Part("food", amount, top: top), Part("other", 5)) with { Loose = Loose((5, 1)) }), StringComparison.Ordinal);

    [Fact]
    public void Enough_AsThePartsAmount_MeetsTheWish() => Gen.Int[0, 1_000_000].Sample(
        seed =>
        {
            NoteRequest request = OddRequests.Of(seed);
            foreach (NoteFault fault in NotePlanner.Plan(request).Faults)
            {
                NotePart part = request.Parts.First(part => part.Pot == fault.Pot && part.Week == fault.Week);
                if (fault is { Kind: NoteFaultKind.SmallMoney, Enough: { } enough })
                {
                    Assert.DoesNotContain(Alone(request, part with { Amount = enough }).Faults, again => again.Kind == NoteFaultKind.SmallMoney);
                    Assert.DoesNotContain(Alone(request, AllWeeks(request, part, enough)).Faults, again => again.Kind == NoteFaultKind.SmallMoney && again.Week == part.Week);
                }

                if (fault is { Kind: NoteFaultKind.SmallMoney, ByTeller: true })
                {
                    Assert.DoesNotContain(Alone(request with { Source = new CashSource.Teller() }, part).Faults, again => again.Kind == NoteFaultKind.SmallMoney);
                }

                if (fault is { Kind: NoteFaultKind.TopNote, Enough: { } top })
                {
                    NotePlan better = Alone(request, part with { Wishes = part.Wishes with { TopNote = top, Small = null } });
                    Assert.True(better.KeptBack() < Alone(request with { Loose = Core.Cash.Notes.None }, part).KeptBack());
                }
            }
        },
        iter: 300);

    private static NotePart[] AllWeeks(NoteRequest request, NotePart part, Money amount) =>
        [.. request.Parts.Where(week => week.Pot == part.Pot).Select(week => week with { Amount = amount })];

    private static NotePlan Alone(NoteRequest request, params NotePart[] parts) => NotePlanner.Plan(request with
    {
        Source = request.Source is CashSource.Machine machine ? machine with { Limit = null } : request.Source,
        Parts = [.. parts],
    });

    private static string Said(NoteRequest request) => NotePlanner.Plan(request).Faults[0].Said(NumberStyle.CommaPoint)!;

    private static NoteRequest Machine(long[] notes, params NotePart[] parts) =>
        Teller(Notes(100, 50, 20, 10, 5), parts) with { Source = new CashSource.Machine(Notes(notes), null) };
}
