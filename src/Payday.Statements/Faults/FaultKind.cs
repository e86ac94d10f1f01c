namespace Payday.Statements.Faults;

/// <summary>What is wrong with a file, a statement or a line, or was noticed in it. Each says what its two values are.</summary>
public enum FaultKind
{
    /// <summary>The file is empty.</summary>
    Empty,

    /// <summary>More bytes than are read. Wanted: the most.</summary>
    TooLarge,

    /// <summary>More lines than are read. Wanted: the most.</summary>
    TooManyLines,

    /// <summary>Nested deeper than any statement is. Wanted: the most.</summary>
    TooDeep,

    /// <summary>A spreadsheet, a PDF or a packed file. Found: what it is.</summary>
    NotAText,

    /// <summary>None of the formats.</summary>
    NotAStatement,

    /// <summary>XML that can't be read: cut off, badly nested, with a DTD or entities.</summary>
    BrokenXml,

    /// <summary>No statement in a file of a known format.</summary>
    NoStatement,

    /// <summary>No column of dates and amounts can be found.</summary>
    NoColumns,

    /// <summary>A currency that isn't known here. Found: the code.</summary>
    UnknownCurrency,

    /// <summary>Neither the file nor the household says the currency.</summary>
    CurrencyMissing,

    /// <summary>An amount in another currency than the account's. Found: its code. Wanted: the account's.</summary>
    OtherCurrency,

    /// <summary>A line without an amount.</summary>
    AmountMissing,

    /// <summary>A text that is no amount. Found: it.</summary>
    NotAnAmount,

    /// <summary>An amount with more decimals than the currency has. Found: it. Wanted: the currency.</summary>
    TooManyDecimals,

    /// <summary>Neither in nor out is said for an amount. Found: what stands there.</summary>
    DirectionMissing,

    /// <summary>A line that doesn't have the parts its format asks for. Found: its beginning.</summary>
    BrokenLine,

    /// <summary>Noticed: a line without a booking date that can be read got its value date, else the statement's end. Found: what stands there. Wanted: the date taken.</summary>
    DateReplaced,

    /// <summary>A line without a date, in a statement that has none either. Found: what stands there.</summary>
    DateMissing,

    /// <summary>Noticed: a day that isn't in its month was taken as the month's last. Found: as written. Wanted: the date taken.</summary>
    NoSuchDay,

    /// <summary>Noticed: a balance that can't be used. Found: what stands there.</summary>
    BalanceUnusable,

    /// <summary>Noticed: a bank's reference stands at two lines. Found: it.</summary>
    IdTwice,

    /// <summary>Noticed: lines with a mark of reversal were read the other way round, as only so the balances agree.</summary>
    SignsTurned,

    /// <summary>Noticed: the payments of a batch don't add up to its line; the line alone counts. Found: their sum. Wanted: the line.</summary>
    PartsDiffer,

    /// <summary>Noticed: a report that isn't a closed statement.</summary>
    NotClosed,

    /// <summary>Noticed: the file says how many lines it has, and has another number. Found: those there. Wanted: those said.</summary>
    CountDiffers,

    /// <summary>Noticed: the file was cut off within a group; what was read stands.</summary>
    CutOff,

    /// <summary>The running balance doesn't follow from the line before. Found: the balance there. Wanted: what it should be.</summary>
    BalanceBreaks,
}
