using System.Collections.Immutable;
using Payday.Core.Drafts;
using NodaTime;
using Payday.Statements.Habits;

namespace Payday.Statements.Learning;

/// <summary>Something of a household that statements propose. One of the nested cases. Nothing of it is in a household before a person takes it.</summary>
/// <param name="Name">What it would be called: unlike that of any other of its kind here.</param>
public abstract record ProposedItem(string Name)
{
    /// <summary>What it is known by when the same statements, or more of them, are read again.</summary>
    public string Key => $"{Kind} {Name}";

    /// <summary>The id it has in the household once it is taken, whatever its name becomes; null for what is no item of a list.</summary>
    public abstract string? Id { get; }

    /// <summary>What it is, in a word.</summary>
    public abstract string Kind { get; }

    /// <summary>The household with it added.</summary>
    public abstract HouseholdDraft In(HouseholdDraft household);

    /// <summary>An income source.</summary>
    /// <param name="Item">The source.</param>
    /// <param name="Series">The lines it was found in.</param>
    public sealed record Source(SourceDraft Item, Recurring Series) : ProposedItem(Item.Name!)
    {
        /// <inheritdoc/>
        public override string? Id => Item.Id;

        /// <inheritdoc/>
        public override string Kind => "income";

        /// <inheritdoc/>
        public override HouseholdDraft In(HouseholdDraft household) => household with { Sources = [.. household.Sources ?? [], Item] };
    }

    /// <summary>A bill.</summary>
    /// <param name="Item">The bill, with the amount to hold.</param>
    /// <param name="Series">The lines it was found in.</param>
    /// <param name="MayBeDebt">Whether its words speak of a debt, so that it is taken alone and never with others.</param>
    public sealed record Bill(BillDraft Item, Recurring Series, bool MayBeDebt) : ProposedItem(Item.Name!)
    {
        /// <inheritdoc/>
        public override string? Id => Item.Id;

        /// <inheritdoc/>
        public override string Kind => "bill";

        /// <summary>The same as a debt, of which what is owed and its rate are still to be typed.</summary>
        public DebtDraft AsDebt => new()
        {
            Id = Item.Id,
            Name = Item.Name,
            Minimum = new() { Kind = MinimumKind.Fixed, Fixed = Item.Amount },
            Due = Item.Schedule is { Kind: ScheduleKind.Monthly, Day: { } day } ? day : null,
            Schedule = Item.Schedule is { Kind: ScheduleKind.Monthly } ? null : Item.Schedule,
        };

        /// <inheritdoc/>
        public override HouseholdDraft In(HouseholdDraft household) => household with { Bills = [.. household.Bills ?? [], Item] };
    }

    /// <summary>A pot for what is spent.</summary>
    /// <param name="Item">The pot, in the last place: its rank is given as it is taken.</param>
    /// <param name="Habit">The lines it was found in.</param>
    public sealed record Pot(PotDraft Item, Habit Habit) : ProposedItem(Item.Name!)
    {
        /// <inheritdoc/>
        public override string? Id => Item.Id;

        /// <inheritdoc/>
        public override string Kind => "pot";

        /// <inheritdoc/>
        public override HouseholdDraft In(HouseholdDraft household) => household with
        {
            Pots = [.. household.Pots ?? [], Item with { Rank = (household.Pots ?? []).Select(pot => pot.Rank ?? 0).DefaultIfEmpty(0).Max() + 1 }],
        };
    }

    /// <summary>What is in the account.</summary>
    /// <param name="Amount">The closing balance, in whole units.</param>
    /// <param name="ClosedOn">The day at whose end it was there.</param>
    /// <param name="Start">The day on which the household begins with it: the next one, but not one to come.</param>
    public sealed record Account(decimal Amount, LocalDate ClosedOn, LocalDate Start) : ProposedItem("In the account")
    {
        /// <inheritdoc/>
        public override string? Id => null;

        /// <inheritdoc/>
        public override string Kind => "balance";

        /// <inheritdoc/>
        public override HouseholdDraft In(HouseholdDraft household) => household with
        {
            Start = Start,
            Opening = (household.Opening ?? new()) with { Account = Amount },
        };
    }

    /// <summary>A new amount of a bill or a source that the household has.</summary>
    /// <param name="Name">What the household calls it.</param>
    /// <param name="ItemId">The household's id of it.</param>
    /// <param name="Here">What the household has, in whole units.</param>
    /// <param name="Found">What the lines have, in whole units.</param>
    /// <param name="From">The day from which it is to hold: the one after the last line, as what was due up to then is settled or known.</param>
    /// <param name="Series">The lines it was found in.</param>
    public sealed record NewAmount(string Name, string ItemId, decimal Here, decimal Found, LocalDate From, Recurring Series) : ProposedItem(Name)
    {
        /// <inheritdoc/>
        public override string? Id => ItemId;

        /// <inheritdoc/>
        public override string Kind => "amount";

        /// <inheritdoc/>
        public override HouseholdDraft In(HouseholdDraft household) => With(household, later => [.. later.Where(change => change.From < From), new LaterDraft { From = From, Amount = Found }]);

        /// <summary>The household without the change.</summary>
        public HouseholdDraft OutOf(HouseholdDraft household) => With(household, later => [.. later.Where(change => change.From != From)]);

        private HouseholdDraft With(HouseholdDraft household, Func<ImmutableArray<LaterDraft>, ImmutableArray<LaterDraft>> change)
        {
            ArgumentNullException.ThrowIfNull(household);
            ImmutableArray<LaterDraft>? Changed(ImmutableArray<LaterDraft>? later) => change(later ?? []) is { IsEmpty: false } all ? all : null;
            return Series.IsIncome
                ? household with { Sources = [.. (household.Sources ?? []).Select(source => source.Id == ItemId ? source with { Later = Changed(source.Later) } : source)] }
                : household with { Bills = [.. (household.Bills ?? []).Select(bill => bill.Id == ItemId ? bill with { Later = Changed(bill.Later) } : bill)] };
        }
    }
}
