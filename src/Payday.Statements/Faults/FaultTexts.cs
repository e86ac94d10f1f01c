using System.Globalization;

namespace Payday.Statements.Faults;

/// <summary>The one table of sentences for <see cref="StatementFault"/>.</summary>
public static class FaultTexts
{
    /// <summary>One sentence: where, what is wrong, and what to do where something can be done.</summary>
    public static string Of(StatementFault fault)
    {
        ArgumentNullException.ThrowIfNull(fault);
        string text = Text(fault);
        return fault.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $"Line {fault.Line}: {text}") : text;
    }

    private static string Text(StatementFault fault) => fault.Kind switch
    {
        FaultKind.Empty => "The file is empty.",
        FaultKind.TooLarge => $"The file is larger than {fault.Wanted} MB; ask the bank for a shorter period.",
        FaultKind.TooManyLines => $"The file has more than {fault.Wanted} lines; ask the bank for a shorter period.",
        FaultKind.TooDeep => "It is nested deeper than any statement; the file is damaged.",
        FaultKind.NotAText => $"The file is {fault.Found}; ask the bank for CSV, OFX, camt.053 or MT940.",
        FaultKind.NotAStatement => "This is no statement in CSV, OFX, camt.053, camt.052 or MT940.",
        FaultKind.BrokenXml => "The XML can't be read from here on; the file is damaged or cut off. Download it again.",
        FaultKind.NoStatement => "There is no statement in the file.",
        FaultKind.NoColumns => "No columns with dates and amounts were found.",
        FaultKind.UnknownCurrency => $"The currency '{fault.Found}' isn't known here.",
        FaultKind.CurrencyMissing => "The file doesn't say its currency.",
        FaultKind.OtherCurrency => $"An amount is in {fault.Found}, but the account is in {fault.Wanted}.",
        FaultKind.AmountMissing => "There is no amount; the line is left out.",
        FaultKind.NotAnAmount => $"'{fault.Found}' is no amount; the line is left out.",
        FaultKind.TooManyDecimals => $"'{fault.Found}' has more decimals than {fault.Wanted} has; the line is left out.",
        FaultKind.DirectionMissing => $"Whether it came in or went out isn't said ('{fault.Found}'); the line is left out.",
        FaultKind.BrokenLine => $"'{fault.Found}' can't be read as a line of a statement; it is left out.",
        FaultKind.DateReplaced => $"'{fault.Found}' is no booking date; {fault.Wanted} is taken.",
        FaultKind.DateMissing => $"'{fault.Found}' is no date; the line is left out.",
        FaultKind.NoSuchDay => $"'{fault.Found}' is a day that isn't there; {fault.Wanted} is taken.",
        FaultKind.BalanceUnusable => $"The balance '{fault.Found}' can't be used.",
        FaultKind.IdTwice => $"The bank's reference '{fault.Found}' stands at two lines; both count.",
        FaultKind.SignsTurned => "Lines marked as reversals were read the other way round, as only so the balances agree.",
        FaultKind.PartsDiffer => $"The payments of a batch add up to {fault.Found}, its line is {fault.Wanted}; the line counts.",
        FaultKind.NotClosed => "This is a report of the day, not a closed statement.",
        FaultKind.CountDiffers => $"The file says it has {fault.Wanted} lines, but {fault.Found} are there; some may be missing.",
        FaultKind.CutOff => "The file ends within a group; it may be cut off.",
        FaultKind.BalanceBreaks => $"The balance here is {fault.Found}, but should be {fault.Wanted}; a line may be missing.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "There is no such fault."),
    };
}
