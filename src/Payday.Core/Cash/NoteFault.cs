using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Cash;

/// <summary>A wish that the plan could not meet.</summary>
/// <param name="Kind">Which wish.</param>
/// <param name="Pot">The pot's stable name.</param>
/// <param name="Name">What the person calls the pot.</param>
/// <param name="Week">The fill day, or null.</param>
/// <param name="Wished">What was asked for: the small money, the top note or the amount.</param>
/// <param name="Possible">What the plan does instead: the small money it holds, the smallest note that can be fetched, or the amount in notes.</param>
public sealed record NoteFault(NoteFaultKind Kind, PotId Pot, string Name, LocalDate? Week, Money Wished, Money Possible)
{
    /// <summary>
    /// What mends it beside giving up the wish, and was found to: the amount from which on the small money can be had,
    /// or the top note with which the amount can be paid. Null where there is none.
    /// </summary>
    public Money? Enough { get; init; }

    /// <summary>Whether a teller, who has all notes in use, could meet the wish where this source can't.</summary>
    public bool ByTeller { get; init; }

    /// <summary>What is wrong and how to mend it, in one sentence.</summary>
    /// <param name="style">How the household writes numbers.</param>
    public string Sentence(NumberStyle style)
    {
        string who = Week is { } week ? $"{Name} ({LocalDatePattern.Iso.Format(week)})" : Name;
        string wished = Wished.ToString(style);
        string possible = Possible.ToString(style);
        return Kind switch
        {
            NoteFaultKind.SmallMoney => string.Create(
                CultureInfo.InvariantCulture,
                $"{who} wants {wished} in small notes but can have {possible}; {OneOf("lower its small money", Enough is { } amount ? $"raise its amount to {amount.ToString(style)}" : "", ByTeller ? "ask a teller" : "")}."),
            NoteFaultKind.TopNote => string.Create(
                CultureInfo.InvariantCulture,
                $"{who} takes no note above {wished} but the smallest to be had is {possible}; {OneOf(Enough is { } ? "raise its top note" : "", ByTeller ? "ask a teller" : "", "keep it in the account")}."),
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"{who} gets {possible} of {wished} because the machine's limit is too low; raise the limit or use a teller."),
        };
    }

    private static string OneOf(params string[] ways)
    {
        string[] there = [.. ways.Where(way => way.Length > 0)];
        return there.Length == 1 ? there[0] : $"{string.Join(", ", there[..^1])} or {there[^1]}";
    }
}

/// <summary>Which wish a plan could not meet.</summary>
public enum NoteFaultKind
{
    /// <summary>The part can't hold its small money; it holds as much as it can.</summary>
    SmallMoney,

    /// <summary>The part's top note is below every note that can be fetched; what notes on hand can't pay is kept back.</summary>
    TopNote,

    /// <summary>The machine gives less than is needed; the rest of the part is kept back.</summary>
    Limit,
}
