using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Drafts;

/// <summary>A pot as it was entered: its kind, what that kind asks for, where it is held and how.</summary>
public sealed partial record PotDraft : ItemDraft
{
    /// <summary>What it is for.</summary>
    public PotUse? Kind { get; init; }

    /// <summary>Spending: what goes in, in whole units.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Spending: what that is for.</summary>
    public FillPer? Per { get; init; }

    /// <summary>Spending, in cash: whether a payday's or month's fill is divided over the weeks; it may be missing.</summary>
    public bool? SplitsOverWeeks { get; init; }

    /// <summary>Sinking: what must be there, in whole units.</summary>
    public decimal? Target { get; init; }

    /// <summary>Sinking: by when.</summary>
    public LocalDate? By { get; init; }

    /// <summary>Sinking: when it is needed again; it may be missing.</summary>
    public ScheduleDraft? Repeats { get; init; }

    /// <summary>Sinking: the last day whose spending is settled; it may be missing.</summary>
    public LocalDate? SettledTo { get; init; }

    /// <summary>Sinking: whether it gets nothing any more; it may be missing.</summary>
    public bool? Finished { get; init; }

    /// <summary>Ladder: the smallest step, in whole units.</summary>
    public decimal? Unit { get; init; }

    /// <summary>Ladder: how many steps.</summary>
    public int? Steps { get; init; }

    /// <summary>Ladder: their order.</summary>
    public LadderOrder? Order { get; init; }

    /// <summary>Reserve: where it is full, in whole units.</summary>
    public decimal? Level { get; init; }

    /// <summary>Reserve: what a payday adds, in whole units.</summary>
    public decimal? PerPayday { get; init; }

    /// <summary>What the amount, the target or the level changes to, each from a date on; they may be missing. A ladder has none.</summary>
    public ImmutableArray<LaterDraft>? Later { get; init; }

    /// <summary>Where it is held.</summary>
    public Place? Place { get; init; }

    /// <summary>Its place in the order of cuts; missing, it follows from the list.</summary>
    public int? Rank { get; init; }

    /// <summary>The least that a cut leaves of a fill, in whole units; it may be missing.</summary>
    public decimal? Floor { get; init; }

    /// <summary>What was in it at the start, in whole units; it may be missing.</summary>
    public decimal? Has { get; init; }

    /// <summary>In cash: the largest note it takes, in whole units; it may be missing.</summary>
    public decimal? TopNote { get; init; }

    /// <summary>In cash: the small money it wants; it may be missing.</summary>
    public SmallMoneyDraft? Small { get; init; }

    /// <summary>In cash: where what is left of it moves on to; missing, it stays.</summary>
    public LeftOverDraft? LeftOver { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes a pot of.</summary>
    /// <param name="pot">The pot.</param>
    /// <param name="has">What was in it at the start, or null.</param>
    public static PotDraft Of(Pot pot, Money? has)
    {
        ArgumentNullException.ThrowIfNull(pot);
        PotDraft draft = OfKind(pot.Kind);
        return draft with
        {
            Id = pot.Id.Text,
            Name = pot.Name,
            Place = pot.Place,
            Rank = pot.Rank,
            Floor = pot.Floor.ToDecimal(),
            Has = has?.ToDecimal(),
            TopNote = pot.Notes.TopNote?.ToDecimal(),
            Small = pot.Notes.Small is { } small ? new() { Note = small.Note.ToDecimal(), AtLeast = small.AtLeast.ToDecimal() } : null,
            LeftOver = LeftOverDraft.Of(pot.MovesOnTo),
        };
    }

    private static PotDraft OfKind(PotKind kind) => kind switch
    {
        PotKind.Spending spending => new()
        {
            Kind = PotUse.Spending,
            Amount = spending.Amount.ToDecimal(),
            Later = LaterDraft.Of(spending.Later),
            Per = spending.Per,
            SplitsOverWeeks = spending.SplitsOverWeeks ? true : null,
        },
        PotKind.Sinking sinking => new()
        {
            Kind = PotUse.Sinking,
            Target = sinking.Target.ToDecimal(),
            Later = LaterDraft.Of(sinking.Later),
            By = sinking.By,
            Repeats = sinking.Repeats is { } repeats ? ScheduleDraft.Of(repeats) : null,
            SettledTo = sinking.SettledTo,
            Finished = sinking.Finished ? true : null,
        },
        PotKind.Ladder ladder => new() { Kind = PotUse.Ladder, Unit = ladder.Unit.ToDecimal(), Steps = ladder.Steps, Order = ladder.Order },
        PotKind.Reserve reserve => new() { Kind = PotUse.Reserve, Level = reserve.Level.ToDecimal(), Later = LaterDraft.Of(reserve.Later), PerPayday = reserve.PerPayday.ToDecimal() },
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
