using Payday.Core.Amounts;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What a sinking pot asks, in words.</summary>
internal static class PotQuestion
{
    /// <summary>What happened, in a sentence.</summary>
    public static string Of(PotRow row, NumberStyle style)
    {
        var kind = (PotKind.Sinking)row.Pot.Kind;
        SinkingState state = row.Sinking!;
        Money target = kind.TargetBy(state.By);
        return state.Stage == SinkingStage.Bought
            ? $"{row.Pot.Name}: {state.Spent.ToString(style)} was spent, so it counts as bought; {row.HasNow.ToString(style)} is left."
            : $"{row.Pot.Name}: {(target - row.HasNow).ToString(style)} short of {target.ToString(style)}, and {DateText.Long(state.By)} is past.";
    }

    /// <summary>The commands that answer, in a sentence.</summary>
    public static string Commands(PotRow row, NodaTime.LocalDate payday)
    {
        string pot = $"payday pot \"{row.Pot.Name}\"";
        return (row.Sinking!.Stage, GoesOn(row, payday)) switch
        {
            (SinkingStage.Bought, true) => $"Nothing is proposed until you say what becomes of it: {pot} --finished, --repeats yearly or --go-on.",
            (SinkingStage.Bought, false) => $"Nothing is proposed until you say what becomes of it: {pot} --finished, --repeats yearly or --by DATE.",
            _ => $"Nothing is proposed until it has a date: {pot} --by DATE, or --finished.",
        };
    }

    /// <summary>What is asked, in a word for scripts; null where nothing is.</summary>
    public static string? Word(PotRow row) => !row.Asks ? null : row.Sinking!.Stage == SinkingStage.Bought ? "bought" : "date";

    /// <summary>Whether a pot that was spent from can go on to its date; it needs another where that is past.</summary>
    public static bool GoesOn(PotRow row, NodaTime.LocalDate payday) => payday <= row.Sinking!.By;
}
