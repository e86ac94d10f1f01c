using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Text;

namespace Payday.Slips;

/// <summary>The sentences of a slip, however it is laid out.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Nothing">What is said where there is no note.</param>
/// <param name="Before">What stands above the notes: a sentence, and whether it is to be ticked.</param>
/// <param name="After">What stands below them.</param>
internal sealed record SlipWords(string Title, string Nothing, ImmutableArray<(string Sentence, bool IsToTick)> Before, ImmutableArray<string> After)
{
    private const string CounterCaution = "Check the notes before you leave the counter.";
    private const string NothingToFetch = "Nothing to withdraw.";
    private const string MachineCaution = "Take the card, and count the notes before you go.";

    /// <summary>Those of a slip.</summary>
    /// <param name="data">What it says.</param>
    /// <param name="lines">Its notes by value.</param>
    public static SlipWords Of(SlipData data, ImmutableArray<NoteLine> lines)
    {
        ArgumentNullException.ThrowIfNull(data);
        return data switch
        {
            { Kind: SlipKind.Deposit } => new("Deposit", "Nothing to pay in.", [], []),
            { AtAMachine: true } => new("Withdrawal", NothingToFetch, [.. Ask(data, lines)], [.. Small(data), MachineCaution]),
            _ => new("Withdrawal", NothingToFetch, [], [CounterCaution]),
        };
    }

    private static IEnumerable<(string Sentence, bool IsToTick)> Ask(SlipData data, ImmutableArray<NoteLine> lines) => data.Trips.Length < 2
        ? [($"Ask the machine for {NoteCounts.Worth(lines, data.Currency).ToString(data.Style)} {data.Currency.Code}, in these notes where it lets you choose.", false)]
        :
        [
            ($"The machine gives {data.Limit?.ToString(data.Style)} {data.Currency.Code} at most each time, so go {data.Trips.Length} times, once a day (a rule of our own):", false),
            .. data.Trips.Select(trip => ($"{DateText.Weekday(trip.Date)}: press {NoteCounts.Worth(trip.Notes, data.Currency).ToString(data.Style)} ({NoteCounts.Words(trip.Notes, data.Style)})", true)),
            ("In all, in these notes where it lets you choose:", false),
        ];

    // A machine has only its own notes; who wanted smaller ones hears it here, where something can be done about it.
    private static IEnumerable<string> Small(SlipData data) => data.NoSmallMoney.IsEmpty
        ? []
        : [CleanText.OneLine($"It gives too few small notes for {string.Join(", ", data.NoSmallMoney)}; change some in a shop, or ask a teller.")];
}
