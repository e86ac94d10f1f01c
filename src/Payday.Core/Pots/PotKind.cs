using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;

namespace Payday.Core.Pots;

/// <summary>What a pot is for. One of the nested cases.</summary>
public abstract record PotKind
{
    private PotKind()
    {
    }

    /// <summary>Its amounts.</summary>
    public abstract IEnumerable<Money> Amounts { get; }

    /// <summary>The most that goes in at once.</summary>
    public abstract Money LargestFill { get; }

    /// <summary>Used up each period.</summary>
    /// <param name="Amount">Zero or more, per <paramref name="Per"/>, before it first changes.</param>
    /// <param name="Per">Week, payday or month.</param>
    public sealed record Spending(Money Amount, FillPer Per) : PotKind
    {
        /// <summary>Whether cash for a payday or a month is divided over the fill days too; a week's always is.</summary>
        public bool SplitsOverWeeks { get; init; }

        /// <summary>Whether its cash goes in the wallet fill day by fill day, or all of it on the first one.</summary>
        public bool GoesWeekByWeek => Per == FillPer.Week || SplitsOverWeeks;

        /// <summary>What <see cref="Amount"/> changes to, each from a date on.</summary>
        public LaterAmounts Later { get; init; } = LaterAmounts.None;

        /// <inheritdoc/>
        public override IEnumerable<Money> Amounts => [Amount, .. Later.All.Select(change => change.Amount)];

        /// <inheritdoc/>
        public override Money LargestFill => Amounts.Max();

        /// <summary>The amount that holds on a fill day, or on the payday of a payday's or month's amount.</summary>
        public Money AmountOn(LocalDate day) => Later.On(day, Amount);
    }

    /// <summary>A target by a date.</summary>
    /// <param name="Target">What must be there, above zero, before it first changes.</param>
    /// <param name="By">The date by which it must be there; the first one where it repeats.</param>
    public sealed record Sinking(Money Target, LocalDate By) : PotKind
    {
        /// <summary>When the target is needed again after <see cref="By"/>, or null where it is needed once.</summary>
        public Schedule? Repeats { get; init; }

        /// <summary>The last day whose spending is settled: the pot goes on in spite of it. Null where nothing is.</summary>
        public LocalDate? SettledTo { get; init; }

        /// <summary>Whether it has done what it was for and asks for nothing any more.</summary>
        public bool Finished { get; init; }

        /// <summary>What <see cref="Target"/> changes to, each from a date on.</summary>
        public LaterAmounts Later { get; init; } = LaterAmounts.None;

        /// <inheritdoc/>
        public override IEnumerable<Money> Amounts => [Target, .. Later.All.Select(change => change.Amount)];

        /// <inheritdoc/>
        public override Money LargestFill => Amounts.Max();

        /// <summary>What must be there by a date on which it is needed.</summary>
        public Money TargetBy(LocalDate by) => Later.On(by, Target);
    }

    /// <summary>A savings schedule of steps, one a payday.</summary>
    /// <remarks>Its unit never changes: steps are counted by what was put in, and another unit would count anew those that are done.</remarks>
    /// <param name="Unit">The smallest step, above zero.</param>
    /// <param name="Steps">How many steps, 1 to 1,000.</param>
    /// <param name="Order">Rising 1..n times the unit, falling n..1, or even: always the unit.</param>
    public sealed record Ladder(Money Unit, int Steps, LadderOrder Order) : PotKind
    {
        /// <inheritdoc/>
        public override IEnumerable<Money> Amounts => [Unit];

        /// <inheritdoc/>
        public override Money LargestFill => Order == LadderOrder.Even
            ? Unit
            : Money.FromMinorUnits((long)Int128.Min((Int128)Unit.MinorUnits * Steps, long.MaxValue), Unit.Currency);
    }

    /// <summary>Kept for trouble: up to a level, then nothing.</summary>
    /// <param name="Level">Above zero, before it first changes.</param>
    /// <param name="PerPayday">What a payday adds until then, above zero.</param>
    public sealed record Reserve(Money Level, Money PerPayday) : PotKind
    {
        /// <summary>What <see cref="Level"/> changes to, each from a date on.</summary>
        public LaterAmounts Later { get; init; } = LaterAmounts.None;

        /// <inheritdoc/>
        public override IEnumerable<Money> Amounts => [Level, PerPayday, .. Later.All.Select(change => change.Amount)];

        /// <inheritdoc/>
        public override Money LargestFill => PerPayday;

        /// <summary>Where it is full on a payday.</summary>
        public Money LevelOn(LocalDate payday) => Later.On(payday, Level);
    }
}

/// <summary>What a spending amount is for.</summary>
public enum FillPer
{
    /// <summary>Each fill day of the period.</summary>
    Week,

    /// <summary>Each payday.</summary>
    Payday,

    /// <summary>Each month, over its usual paydays: an extra payday finds it full.</summary>
    Month,

    /// <summary>Each month, spread over all of its paydays.</summary>
    MonthSpread,
}

/// <summary>The order of a ladder's steps.</summary>
public enum LadderOrder
{
    /// <summary>1, 2, … n times the unit.</summary>
    Rising,

    /// <summary>n, … 2, 1 times the unit.</summary>
    Falling,

    /// <summary>The unit each time.</summary>
    Even,
}
