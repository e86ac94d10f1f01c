using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Texts;

/// <summary>What is said of a wish that a note plan could not meet.</summary>
internal static class NoteTexts
{
    /// <summary>One sentence.</summary>
    public static string Of(NoteFault fault, NumberStyle style)
    {
        string who = fault.Week is { } week ? $"{fault.Name} ({LocalDatePattern.Iso.Format(week)})" : fault.Name;
        string wished = fault.Wished.ToString(style);
        string possible = fault.Possible.ToString(style);
        string teller = fault.ByTeller ? "ask a teller" : "";
        return fault.Kind switch
        {
            NoteFaultKind.SmallMoney =>
                $"{who} wants {wished} in small notes but can have {possible}; {OneOf("lower its small money", fault.Enough is { } amount ? $"raise its amount to {amount.ToString(style)}" : "", teller)}.",
            NoteFaultKind.TopNote =>
                $"{who} takes no note above {wished} but the smallest to be had is {possible}; {OneOf(fault.Enough is { } ? "raise its top note" : "", teller, "keep it in the account")}.",
            _ => $"{who} gets {possible} of {wished} because the machine's limit is too low; raise the limit or use a teller.",
        };
    }

    private static string OneOf(params string[] ways)
    {
        string[] there = [.. ways.Where(way => way.Length > 0)];
        return there.Length == 1 ? there[0] : $"{string.Join(", ", there[..^1])} or {there[^1]}";
    }
}
