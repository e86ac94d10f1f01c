using Payday.Core.Drafts;
using Payday.Core.Ledgers;
using Payday.Core.Pots;
using Payday.Store.Formats;
using Members = Payday.Core.Drafts.PotDraft.Members;

namespace Payday.Store.HouseholdFiles;

/// <summary>A pot in a household file: its kind, what goes with it, and what it has at the start.</summary>
internal static class PotFormat
{
    private const string Held = "held";
    private const string Floor = "floor";

    public static PartFormat<PotDraft> Fields { get; } = new(
        FileField.OfItem<PotDraft>(ItemMembers.Name, "name"),
        FileField.OfItem<PotDraft>(ItemMembers.Id, "id") with { WrittenAfter = "" },
        FileField.Of(Members.Rank, "rank", new CountValue(1, HouseholdLimits.HighestRank)) with { WrittenAfter = Held },
        FileField.Of(Members.Kind, "kind", new WordValue<PotUse>(Words.PotUses)),
        FileField.Of(Members.Amount, "amount", FileValues.Amount),
        FileField.Of(Members.Per, "per", new WordValue<FillPer>(Words.FillPers)),
        FileField.Of(Members.SplitsOverWeeks, "weeks", new WordValue<bool>(Words.WeekUses)),
        FileField.Of(Members.Target, "target", FileValues.Amount),
        FileField.Of(Members.By, "by", FileValues.Date),
        FileField.Of(Members.Repeats, "repeats", ScheduleFormat.Value),
        FileField.Of(Members.SettledTo, "settledTo", FileValues.Date),
        FileField.Of(Members.Finished, "finished", new FlagValue(writesFalse: false)),
        FileField.Of(Members.Unit, "unit", FileValues.Amount),
        FileField.Of(Members.Steps, "steps", new CountValue(1, HouseholdLimits.MostSteps)),
        FileField.Of(Members.Order, "order", new WordValue<LadderOrder>(Words.LadderOrders)),
        FileField.Of(Members.Level, "level", FileValues.Amount),
        FileField.Of(Members.PerPayday, "perPayday", FileValues.Amount),
        FileField.Of(Members.Later, "later", LaterFormat.Value),
        FileField.Of(Members.Place, Held, new WordValue<Place>(Words.Places)),
        FileField.Of(Members.Floor, Floor, FileValues.Amount),
        FileField.Of(Members.TopNote, "topNote", FileValues.Piece),
        FileField.Of(Members.Small, "small", SmallMoneyFormat.Value),
        FileField.Of(Members.LeftOver, "leftOver", new LeftOverFormat()),
        FileField.Of(Members.Has, "has", FileValues.Amount) with { WrittenAfter = Floor })
    {
        IsKnown = pot => pot.Kind is not null,
    };
}
