using System.Collections.Immutable;
using System.Globalization;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Store.Files;
using Payday.Store.Texts;

namespace Payday.Texts;

/// <summary>What is said of arguments, files and printers that can't be taken.</summary>
internal static class EdgeTexts
{
    /// <summary>One sentence: what is wrong, where, what to do.</summary>
    public static string Of(EdgeFault fault, NumberStyle style) => fault switch
    {
        ReadingFault reading => Of(reading),
        WritingFault writing => Of(writing),
        PrinterFault printer => Of(printer),
        ArgumentFault argument => Of(argument, style),
        NotesTextFault notes => Of(notes),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(ReadingFault fault) => fault switch
    {
        ReadingFault.IsFolder => $"{fault.Shown} is a folder; name a file in it.",
        ReadingFault.NeverEnds never => $"{never.Shown} is a {(never.IsDevice ? "device" : "pipe")}; name a file, or pass its content on with -.",
        ReadingFault.Several several => $"There is {string.Join(", ", several.Names)}{(several.More > 0 ? $", and {several.More} more" : "")}; type more of the name.",
        ReadingFault.NotThere => $"There is no file {fault.Shown}.",
        ReadingFault.Denied => $"{fault.Shown} can't be read, for lack of permission.",
        ReadingFault.Failed failed => $"{failed.Shown} can't be read: {TroubleTexts.Of(failed.Trouble)}",
        ReadingFault.TooLarge large => $"{large.Shown} is larger than {large.Most / 1_000_000} MB; this can't be the right file.",
        ReadingFault.NoText => $"{fault.Shown}: This is not a text in UTF-8; save it as UTF-8 and try again.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(WritingFault fault) => fault switch
    {
        WritingFault.NoPlainName => "A file name is missing or holds control characters; give a plain one.",
        WritingFault.IsFolder => $"{fault.Shown} is a folder; give the name of a file in it.",
        WritingFault.NoFileName => $"{fault.Shown} is no file name; give one.",
        WritingFault.NoFolder => $"There is no folder {fault.Shown}; make it first or choose another.",
        WritingFault.FolderNotMade { Shown.Length: 0 } => "The name of the folder is missing; give one.",
        WritingFault.FolderNotMade not => $"The folder {not.Shown} can't be made: {TroubleTexts.Of(not.Trouble)}",
        WritingFault.IsDevice => $"{fault.Shown} is a device; give the name of a file.",
        WritingFault.IsPipe => $"{fault.Shown} is a pipe; give the name of a file.",
        WritingFault.AmongOurs => $"{fault.Shown} is in the folder of Payday's own files; choose another.",
        WritingFault.Failed { Trouble: Trouble.Denied } => $"{fault.Shown} can't be written, for lack of permission; choose another folder.",
        WritingFault.Failed { Trouble: Trouble.TooLong } => $"The name {fault.Shown} is too long; give a shorter one.",
        WritingFault.Failed { Trouble: Trouble.Full } => $"{fault.Shown} can't be written, as the disk is full; make room or choose another.",
        WritingFault.Failed { Trouble: Trouble.ReadOnly } => $"{fault.Shown} can't be written, as that disk is read-only; choose another folder.",
        WritingFault.Failed failed => $"{failed.Shown} can't be written: {TroubleTexts.Of(failed.Trouble)}",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(PrinterFault fault) => fault switch
    {
        PrinterFault.NoPlainName => "A printer's name can't be empty, begin with '-' or hold control characters; give its plain name.",
        PrinterFault.NoCommand => "Printing needs the command 'lp', which is not on this machine; write a PDF instead.",
        PrinterFault.CantBeRun => "The command 'lp' can't be run; write a PDF instead.",
        PrinterFault.NotFinished => "The command 'lp' did not finish and was stopped; look at the printer, then try again.",
        PrinterFault.Refused { Complaint.Length: 0 } => "The command 'lp' failed without a reason; look at the printer.",
        PrinterFault.Refused refused => $"The printer refused: {refused.Complaint}",
        PrinterFault.NoSuchSize no => $"There is no such paper size here; choose one of {string.Join(", ", no.Known)}.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(NotesTextFault fault) => fault switch
    {
        NotesTextFault.NoNotes no => $"'{no.Rest}': write notes like 20=22,10=15, the value and how many.",
        NotesTextFault.TooMany many => string.Create(CultureInfo.InvariantCulture, $"{many.Given}: at most {many.Most} of one value."),
        NotesTextFault.Worthless none => $"{none.Given}: a note is worth more than zero.",
        NotesTextFault.TwoLimits => "Write the machine's notes, and behind one slash its limit: 20 50 / 500.",
        NotesTextFault.NotInUse not => $"{not.Given} is no note in use; there are {string.Join(", ", not.InUse)}.",
        NotesTextFault.NoMachineNotes => "Write at least one note that the machine gives, such as 20.",
        NotesTextFault.NoLimit => "Its limit must be an amount that at least one of its notes fits in.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };

    private static string Of(ArgumentFault fault, NumberStyle style) => fault switch
    {
        ArgumentFault.Of of => $"{of.Given}: {FaultTexts.Of(of.Why, style)}",
        ArgumentFault.NoPair no => $"{no.Given}: write it like {no.Like}",
        ArgumentFault.NoLine => $"{fault.Given}: write it like 3=Food, with the number of a line, or 3=Food=12.50 for a part of it.",
        ArgumentFault.NoNamedAmount no => $"{no.Given}: write it like \"Night shifts=1204.55\", with a name of at most {no.LongestName} plain characters.",
        ArgumentFault.NoCount => $"{fault.Given}: write what is left like Food=21.50.",
        ArgumentFault.LeftNotGiven not => $"{not.Given}: say as well what is left of {not.Pot}.",
        ArgumentFault.BelowZero below => $"{below.Given}: {below.Amount} is below zero; write zero or more.",
        ArgumentFault.NoWholeNumber no => string.Create(CultureInfo.InvariantCulture, $"write a whole number from {no.Least} to {no.Most}."),
        ArgumentFault.NoSuchPot no when Misspelling.Offer(no.Given, no.Pots) is { Length: > 0 } offer => $"There is no pot '{no.Given}'.{offer}",
        ArgumentFault.NoSuchPot no => $"There is no pot '{no.Given}'; there {(no.Pots.IsEmpty ? "are none" : $"is {string.Join(", ", no.Pots)}")}.",
        ArgumentFault.TooLong longer => string.Create(CultureInfo.InvariantCulture, $"{longer.Given} has {longer.Length} characters; shorten it to {longer.Most}."),
        ArgumentFault.NoPeriod no => $"There is nothing of {no.Given} here; the household goes from {no.First} to {no.Last}.",
        ArgumentFault.StillToCome coming => $"{coming.Given}: {DateTexts.StillToCome}",
        ArgumentFault.EntryUnfinished => "Give in or out, an amount and --for NAME; or --undo NUMBER.",
        ArgumentFault.CountedUnfinished => "Write payday entry counted --notes 20=2,10=1, with all the loose notes.",
        ArgumentFault.NoSuchBankLine { Lines: 0 } => "All lines are matched; there is none to take or leave.",
        ArgumentFault.NoSuchBankLine { Lines: 1 } no => $"There is no line {no.Given} to take or leave; only 1 isn't matched.",
        ArgumentFault.NoSuchBankLine no => $"There is no line {no.Given} to take or leave; those that aren't matched are 1 to {no.Lines}.",
        ArgumentFault.NothingProposed => "Nothing is proposed for it; say what it becomes, as N=WHAT.",
        ArgumentFault.NoSuchPurpose no when Misspelling.Offer(no.Given, no.Known) is { Length: > 0 } offer => $"There is nothing called '{no.Given}' here.{offer}",
        ArgumentFault.NoSuchPurpose no => $"There is nothing called '{no.Given}' here; there is {string.Join("; ", no.Known)}.",
        ArgumentFault.NoSuchDebt no when Misspelling.Offer(no.Given[(no.Given.IndexOf(' ', StringComparison.Ordinal) + 1)..], no.Debts) is { Length: > 0 } offer => $"{no.Given}: there is no debt of that name.{offer}",
        ArgumentFault.NoSuchDebt no => $"{no.Given}: there is no debt of that name; there {(no.Debts.IsEmpty ? "are none" : $"is {string.Join(", ", no.Debts)}")}.",
        ArgumentFault.NoPart => $"'{fault.Given}': write a pot with its amount, like Food=12.50.",
        ArgumentFault.NoSuchOwner no when Misspelling.Offer(no.Given, no.Known) is { Length: > 0 } offer => $"There is no bill or debt '{no.Given}'.{offer}",
        ArgumentFault.NoSuchOwner no => $"There is no bill or debt '{no.Given}'; there {(no.Known.IsEmpty ? "are none" : $"is {string.Join(", ", no.Known)}")}.",
        ArgumentFault.TwoOwners two => $"A bill and a debt are called '{two.Given}'; give its id.",
        ArgumentFault.NoTarget => $"--move: '{fault.Given}' is no pot and no debt; name one, or write buffer or stays.",
        ArgumentFault.NotInCash => $"{fault.Given} is in the account, so there is no cash to count.",
        ArgumentFault.NoSuchSource no => $"{no.Given}: there is no income source '{no.Name}'. {no.Near.Said()} Money from nobody on the list is --one-off \"Name=AMOUNT\".",
        ArgumentFault.NoSuchName no => $"{no.Given}: there is no {no.Kind} '{no.Name}'. {no.Near.Said()}",
        ArgumentFault.SeveralOfName several => $"{several.Given}: several are called '{several.Name}'; give its id.",
        ArgumentFault.GivenTwice twice => $"{twice.Given}: {twice.Name} is there twice; give it once.",
        ArgumentFault.NotDue not => $"{not.Given}: {not.Name} isn't due before the next payday, so there is nothing of it to decide yet.",
        ArgumentFault.WhichDay which => $"{which.Given}: {which.Name} has {string.Join(", ", which.Days.Select(LocalDatePattern.Iso.Format))}; write which, like \"{which.Like}\".",
        ArgumentFault.NothingToWithdraw no => $"{no.Given}: {no.Pot} gets nothing in notes on this payday.",
        ArgumentFault.SourceTwice twice => $"{twice.Given}: {twice.Source} is there twice; give what came from it together.",
        ArgumentFault.IsSource source => $"{source.Given}: {source.Source} is an income source; correct what came from it with --income.",
        ArgumentFault.OverdraftLess { Owed.IsZero: true } => $"{fault.Given}: the account has no overdraft.",
        ArgumentFault.OverdraftLess less => $"{fault.Given}: the overdraft is {less.Owed.ToString(style)}; write that much at most.",
        ArgumentFault.OneOffTwice twice => $"{twice.Given}: {twice.Name} is there twice; give it once, or under two names.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "There is no text for it."),
    };
}
