using Payday.Core.ItemLines;

namespace Payday.Texts;

/// <summary>What is said of a line that can't be read as an item.</summary>
internal static class LineTexts
{
    public static string Of(LineFault fault) => fault switch
    {
        LineFault.NoAmount no => NoAmount(no.Line, "Rent 1450 1st"),
        LineFault.RestUnread rest => $"'{rest.Rest}' in '{rest.Line}' can't be read; leave it out, or fill it in by the form.",
        LineFault.ReadsAsDebt debt => $"'{debt.Line}' reads like a debt with its rate: enter it in the list of debts; a name that has % in it goes in quotes here.",
        LineFault.TwoWays two => $"'{two.Part}' in '{two.Line}' can be read two ways: write {two.One}, or {two.Other}.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    /// <summary>What a line leaves open that is needed.</summary>
    public static string Open(string line, IEnumerable<string> fields, string example) =>
        $"'{line}' doesn't say this yet: {string.Join(", ", fields)}. Enter adds it to the line, like {example}.";

    /// <summary>A line without an amount, and how one is written there.</summary>
    public static string NoAmount(string line, string example) => $"'{line}' has no amount behind a name; write it like {example}.";
}
