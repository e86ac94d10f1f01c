using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of a payday that can't be worked on, of decisions that can't be taken, and of those that fell away.</summary>
internal static class RoutineTexts
{
    /// <summary>One sentence, or two where another payday is named.</summary>
    public static string Of(RoutineFault fault, NumberStyle style) => fault switch
    {
        RoutineFault.NoPaydayFrom no => $"No payday is known from {Iso(no.From)} on; add dates to an income source.",
        RoutineFault.NoPaydayAfter no => $"No payday is known after {Iso(no.Payday)}; add dates to an income source, so that its pay period has an end.",
        RoutineFault.Closed closed => $"The payday of {Iso(closed.Last)} is closed, so none up to it can be worked on again.",
        RoutineFault.BeforeStart before => $"The household starts on {Iso(before.Start)}, after {Iso(before.Date)}.",
        RoutineFault.NotAPayday not => $"{Iso(not.Date)} is not a payday."
            + (not.Next is { } next ? $" The next payday is {Iso(next)}." : "")
            + (not.After is { } after ? $" The first after {Iso(not.Date)} is {Iso(after)}." : ""),
        RoutineFault.MoreThanSurplus more => $"There is {more.Surplus.ToString(style)} to place in all; write no more than that.",
        RoutineFault.MoreThanOwed more => $"That is more than is owed; at most {more.Most.ToString(style)}.",
        RoutineFault.NotesAbovePot above => $"{above.Pot} has {above.Has.ToString(style)}, and its notes would come to {above.Notes.ToString(style)}; lower another first.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence.</summary>
    public static string Of(SinkingFault fault) => fault switch
    {
        SinkingFault.NoSuchPot no => $"There is no pot '{no.PotId}'.",
        SinkingFault.NoTarget no => $"{no.Pot} has no target by a date, so there is nothing to say of it.",
        SinkingFault.NoPaydayBy no => $"No payday comes by {DateText.Day(no.Date)} any more; name {DateText.Day(no.Payday)}, the next one, or a later day.",
        SinkingFault.TooFarOff far => $"{DateText.Day(far.Date)} is more than {far.Years} years off; look for a mistyped year.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>One sentence.</summary>
    public static string Of(Dropped dropped, NumberStyle style) => dropped switch
    {
        Dropped.Placements placements =>
            $"{placements.Placed.ToString(style)} was placed and {placements.Left.ToString(style)} is left now, so the surplus is proposed anew.",
        Dropped.Notes notes => $"The notes chosen for {string.Join(", ", notes.Pots)} no longer make its share, so they are proposed anew.",
        _ => throw new ArgumentOutOfRangeException(nameof(dropped), dropped, "There is no text for it."),
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
