using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Drafts;

/// <content>The members of a pot's draft.</content>
public sealed partial record PotDraft
{
    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="PotDraft.Kind"/>
        public static DraftMember<PotDraft, PotUse?> Kind { get; } = new(pot => pot.Kind, (pot, value) => pot with { Kind = value });

        /// <inheritdoc cref="PotDraft.Amount"/>
        public static DraftMember<PotDraft, decimal?> Amount { get; } =
            new(pot => pot.Amount, (pot, value) => pot with { Amount = value }) { Belongs = pot => pot.Kind == PotUse.Spending };

        /// <inheritdoc cref="PotDraft.Per"/>
        public static DraftMember<PotDraft, FillPer?> Per { get; } =
            new(pot => pot.Per, (pot, value) => pot with { Per = value }) { Belongs = pot => pot.Kind == PotUse.Spending };

        /// <inheritdoc cref="PotDraft.SplitsOverWeeks"/>
        public static DraftMember<PotDraft, bool?> SplitsOverWeeks { get; } =
            new(pot => pot.SplitsOverWeeks, (pot, value) => pot with { SplitsOverWeeks = value }) { Belongs = pot => pot.Kind == PotUse.Spending };

        /// <inheritdoc cref="PotDraft.Target"/>
        public static DraftMember<PotDraft, decimal?> Target { get; } =
            new(pot => pot.Target, (pot, value) => pot with { Target = value }) { Belongs = pot => pot.Kind == PotUse.Sinking };

        /// <inheritdoc cref="PotDraft.By"/>
        public static DraftMember<PotDraft, LocalDate?> By { get; } =
            new(pot => pot.By, (pot, value) => pot with { By = value }) { Belongs = pot => pot.Kind == PotUse.Sinking };

        /// <inheritdoc cref="PotDraft.Repeats"/>
        public static DraftMember<PotDraft, ScheduleDraft?> Repeats { get; } =
            new(pot => pot.Repeats, (pot, value) => pot with { Repeats = value }) { Belongs = pot => pot.Kind == PotUse.Sinking };

        /// <inheritdoc cref="PotDraft.SettledTo"/>
        public static DraftMember<PotDraft, LocalDate?> SettledTo { get; } =
            new(pot => pot.SettledTo, (pot, value) => pot with { SettledTo = value }) { Belongs = pot => pot.Kind == PotUse.Sinking };

        /// <inheritdoc cref="PotDraft.Finished"/>
        public static DraftMember<PotDraft, bool?> Finished { get; } =
            new(pot => pot.Finished, (pot, value) => pot with { Finished = value }) { Belongs = pot => pot.Kind == PotUse.Sinking };

        /// <inheritdoc cref="PotDraft.Unit"/>
        public static DraftMember<PotDraft, decimal?> Unit { get; } =
            new(pot => pot.Unit, (pot, value) => pot with { Unit = value }) { Belongs = pot => pot.Kind == PotUse.Ladder };

        /// <inheritdoc cref="PotDraft.Steps"/>
        public static DraftMember<PotDraft, int?> Steps { get; } =
            new(pot => pot.Steps, (pot, value) => pot with { Steps = value }) { Belongs = pot => pot.Kind == PotUse.Ladder };

        /// <inheritdoc cref="PotDraft.Order"/>
        public static DraftMember<PotDraft, LadderOrder?> Order { get; } =
            new(pot => pot.Order, (pot, value) => pot with { Order = value }) { Belongs = pot => pot.Kind == PotUse.Ladder };

        /// <inheritdoc cref="PotDraft.Level"/>
        public static DraftMember<PotDraft, decimal?> Level { get; } =
            new(pot => pot.Level, (pot, value) => pot with { Level = value }) { Belongs = pot => pot.Kind == PotUse.Reserve };

        /// <inheritdoc cref="PotDraft.PerPayday"/>
        public static DraftMember<PotDraft, decimal?> PerPayday { get; } =
            new(pot => pot.PerPayday, (pot, value) => pot with { PerPayday = value }) { Belongs = pot => pot.Kind == PotUse.Reserve };

        /// <inheritdoc cref="PotDraft.Later"/>
        public static DraftMember<PotDraft, ImmutableArray<LaterDraft>?> Later { get; } =
            new(pot => pot.Later, (pot, value) => pot with { Later = value }) { Belongs = pot => pot.Kind is PotUse.Spending or PotUse.Sinking or PotUse.Reserve };

        /// <inheritdoc cref="PotDraft.Place"/>
        public static DraftMember<PotDraft, Place?> Place { get; } = new(pot => pot.Place, (pot, value) => pot with { Place = value });

        /// <inheritdoc cref="PotDraft.Rank"/>
        public static DraftMember<PotDraft, int?> Rank { get; } = new(pot => pot.Rank, (pot, value) => pot with { Rank = value });

        /// <inheritdoc cref="PotDraft.Floor"/>
        public static DraftMember<PotDraft, decimal?> Floor { get; } = new(pot => pot.Floor, (pot, value) => pot with { Floor = value });

        /// <inheritdoc cref="PotDraft.Has"/>
        public static DraftMember<PotDraft, decimal?> Has { get; } = new(pot => pot.Has, (pot, value) => pot with { Has = value });

        /// <inheritdoc cref="PotDraft.TopNote"/>
        public static DraftMember<PotDraft, decimal?> TopNote { get; } = new(pot => pot.TopNote, (pot, value) => pot with { TopNote = value });

        /// <inheritdoc cref="PotDraft.Small"/>
        public static DraftMember<PotDraft, SmallMoneyDraft?> Small { get; } = new(pot => pot.Small, (pot, value) => pot with { Small = value });

        /// <inheritdoc cref="PotDraft.LeftOver"/>
        public static DraftMember<PotDraft, LeftOverDraft?> LeftOver { get; } = new(pot => pot.LeftOver, (pot, value) => pot with { LeftOver = value });
    }
}
