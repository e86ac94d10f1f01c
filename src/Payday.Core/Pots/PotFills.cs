using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;

namespace Payday.Core.Pots;

/// <summary>What a payday should put into each pot.</summary>
public static class PotFills
{
    private static readonly LocalDatePattern DayAndMonth = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    /// <summary>Proposes a pot's fill.</summary>
    /// <remarks>
    /// Spending: the amount of each fill day, or once a payday, or a share of what a month lacks. Sinking: a
    /// level share of what is missing, exact by the date, and nothing while the person has to be asked. Ladder: what the step in progress lacks. Reserve: its
    /// share a payday up to the level. Source of the rules: the project's design, 5.3 and 5.11.
    /// </remarks>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    /// <exception cref="OverflowException">The fill doesn't fit 64 bits.</exception>
    public static FillProposal Propose(Pot pot, PotFacts facts)
    {
        ArgumentNullException.ThrowIfNull(pot);
        ArgumentNullException.ThrowIfNull(facts);
        return pot.Kind switch
        {
            PotKind.Spending spending => Spending(spending, facts),
            PotKind.Sinking sinking => Sinking(sinking, facts),
            PotKind.Ladder ladder => Ladder(ladder, facts),
            PotKind.Reserve reserve => Reserve(reserve, facts),
            _ => throw new ArgumentException("The pot is of an unknown kind.", nameof(pot)),
        };
    }

    private static FillProposal Spending(PotKind.Spending kind, PotFacts facts)
    {
        return kind.Per switch
        {
            FillPer.Week => Weeks(kind, facts),
            FillPer.Payday => new(kind.AmountOn(facts.Payday), $"{ShortAmount.Of(kind.AmountOn(facts.Payday), facts.Numbers)} a payday"),
            _ => Month(kind, facts),
        };
    }

    private static FillProposal Weeks(PotKind.Spending kind, PotFacts facts)
    {
        Money[] weeks = [.. facts.FillDays.Select(kind.AmountOn)];
        string amounts = string.Join(", then ", weeks.Distinct().Select(week => ShortAmount.Of(week, facts.Numbers)));
        return new(Money.Sum(weeks, kind.Amount.Currency), weeks.Length switch
        {
            0 => "no fill day this period",
            1 => $"{amounts} a week, 1 week",
            int count => $"{amounts} a week, {count} weeks",
        });
    }

    private static FillProposal Month(PotKind.Spending kind, PotFacts facts)
    {
        MonthShare[] shares = [.. facts.Months.Select(month => MonthShare.Of(kind, month, facts.Payday, facts.Start, facts.Unit))];
        string text = ShortAmount.Of(shares is [{ Amount: var amount }, ..] ? amount : kind.AmountOn(facts.Payday), facts.Numbers);
        return new(Money.Sum(shares.Select(share => share.Fill), kind.Amount.Currency), shares switch
        {
            [{ Index: < 0, Fill.IsPositive: true } extra] => $"extra: {ShortAmount.Of(extra.Fill, facts.Numbers)} was missed",
            [] or [{ Index: < 0 }] => "extra payday: already full",
            [{ AsPlanned: true, Count: 1 }] => $"{text} a month",
            [{ AsPlanned: true } share] => $"{text} a month, part {share.Index + 1} of {share.Count}",
            [{ Lacking.IsZero: true }] => $"{text} a month, full",
            [var share] => $"{ShortAmount.Of(share.Lacking, facts.Numbers)} of {text} to go",
            _ => $"{text} a month, {shares.Length} months",
        });
    }

    private static FillProposal Sinking(PotKind.Sinking kind, PotFacts facts)
    {
        SinkingState state = facts.Sinking ?? throw new ArgumentException("Of a sinking pot it must be known how far it is.", nameof(facts));
        Money nothing = Money.Zero(kind.Target.Currency);
        Money missing = (kind.TargetBy(state.By) - facts.Balance).ClampToZero();
        string text = ShortAmount.Of(missing, facts.Numbers);
        string by = DayAndMonth.Format(state.By);
        FillProposal proposal = state.Stage switch
        {
            SinkingStage.Finished => new(nothing, "finished"),
            SinkingStage.Bought => new(nothing, $"{ShortAmount.Of(state.Spent, facts.Numbers)} spent: bought?"),
            SinkingStage.PastItsDate => new(nothing, $"{text} short since {by}"),
            _ when missing.IsZero => new(nothing, facts.Payday > state.By ? $"full since {by}, waits" : "full"),
            _ when facts.PaydaysLeft > 1 => new(
                LevelShares.ExactShare(missing, facts.PaydaysLeft, 0, facts.Unit),
                $"{text} short, {facts.PaydaysLeft} paydays"),
            _ => new(missing, $"{text} short by {by}"),
        };
        return proposal with { Stage = state.Stage };
    }

    private static FillProposal Ladder(PotKind.Ladder kind, PotFacts facts)
    {
        int done = LadderSteps.Done(kind, facts.PutInSoFar);
        return done == kind.Steps
            ? new(Money.Zero(kind.Unit.Currency), $"all {kind.Steps} steps done", kind.Steps, kind.Steps)
            : new(
                LadderSteps.SumOf(kind, done + 1) - facts.PutInSoFar.ClampToZero(),
                $"step {done + 1} of {kind.Steps}",
                done + 1,
                kind.Steps);
    }

    private static FillProposal Reserve(PotKind.Reserve kind, PotFacts facts)
    {
        Money level = kind.LevelOn(facts.Payday);
        Money amount = Money.Min(kind.PerPayday, (level - facts.Balance).ClampToZero());
        return new(amount, amount.IsZero ? "full" : $"to {ShortAmount.Of(level, facts.Numbers)}");
    }
}
