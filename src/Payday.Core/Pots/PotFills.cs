using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Pots;

/// <summary>What a payday should put into each pot.</summary>
public static class PotFills
{
    private static readonly LocalDatePattern DayAndMonth = LocalDatePattern.CreateWithInvariantCulture("d MMM");

    /// <summary>Proposes a pot's fill.</summary>
    /// <remarks>
    /// Spending: the amount times the fill days, or once a payday, or a share of a month's amount. Sinking: a
    /// level share of what is missing, exact by the date. Ladder: what the step in progress lacks. Reserve: its
    /// share a payday up to the level. Source of the rules: the project's design, 5.3.
    /// </remarks>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    /// <exception cref="OverflowException">The fill doesn't fit 64 bits.</exception>
    public static FillProposal Propose(Pot pot, PotFacts facts)
    {
        ArgumentNullException.ThrowIfNull(pot);
        ArgumentNullException.ThrowIfNull(facts);
        return pot.Job switch
        {
            PotJob.Spending spending => Spending(spending, facts),
            PotJob.Sinking sinking => Sinking(sinking, facts),
            PotJob.Ladder ladder => Ladder(ladder, facts),
            PotJob.Reserve reserve => Reserve(reserve, facts),
            _ => throw new ArgumentException("The job is of an unknown kind.", nameof(pot)),
        };
    }

    private static FillProposal Spending(PotJob.Spending job, PotFacts facts)
    {
        string amount = ShortAmount.Of(job.Amount, facts.Numbers);
        return job.Per switch
        {
            FillPer.Week => new(job.Amount * facts.FillDays, facts.FillDays switch
            {
                0 => "no fill day this period",
                1 => $"{amount} a week, 1 week",
                int weeks => $"{amount} a week, {weeks} weeks",
            }),
            FillPer.Payday => new(job.Amount, $"{amount} a payday"),
            FillPer.Month => Month(job.Amount, amount, month => month.Usual, facts),
            _ => Month(job.Amount, amount, month => month.All, facts),
        };
    }

    private static FillProposal Month(
        Money amount, string text, Func<MonthPaydays, ImmutableArray<LocalDate>> sharing, PotFacts facts)
    {
        ImmutableArray<ImmutableArray<LocalDate>> months =
            [.. facts.Months.Select(sharing).Where(paydays => paydays.Contains(facts.Payday))];
        Money fill = months.Aggregate(
            Money.Zero(amount.Currency),
            (sum, paydays) => sum + LevelShares.ExactShare(amount, paydays.Length, paydays.IndexOf(facts.Payday), facts.Unit));
        return new(fill, months switch
        {
            [] => "extra payday: already full",
            [[_]] => $"{text} a month",
            [var paydays] => $"{text} a month, {paydays.IndexOf(facts.Payday) + 1} of {paydays.Length}",
            _ => $"{text} a month, {months.Length} months",
        });
    }

    private static FillProposal Sinking(PotJob.Sinking job, PotFacts facts)
    {
        Money missing = (job.Target - facts.Balance).ClampToZero();
        if (missing.IsZero)
        {
            return new(missing, "full");
        }

        string text = ShortAmount.Of(missing, facts.Numbers);
        if (facts.PaydaysLeft.Length > 1)
        {
            return new(
                LevelShares.ExactShare(missing, facts.PaydaysLeft.Length, 0, facts.Unit),
                $"{text} short, {facts.PaydaysLeft.Length} paydays");
        }

        return new(missing, facts.Payday <= job.By
            ? $"{text} short by {DayAndMonth.Format(job.By)}"
            : $"{text} short since {DayAndMonth.Format(job.By)}");
    }

    private static FillProposal Ladder(PotJob.Ladder job, PotFacts facts)
    {
        int done = LadderSteps.Done(job, facts.PutInSoFar);
        return done == job.Steps
            ? new(Money.Zero(job.Unit.Currency), $"all {job.Steps} steps done", job.Steps, job.Steps)
            : new(
                LadderSteps.SumOf(job, done + 1) - facts.PutInSoFar.ClampToZero(),
                $"step {done + 1} of {job.Steps}",
                done + 1,
                job.Steps);
    }

    private static FillProposal Reserve(PotJob.Reserve job, PotFacts facts)
    {
        Money amount = Money.Min(job.PerPayday, (job.Level - facts.Balance).ClampToZero());
        return new(amount, amount.IsZero ? "full" : $"to {ShortAmount.Of(job.Level, facts.Numbers)}");
    }
}
