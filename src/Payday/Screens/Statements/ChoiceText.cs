using System.Collections.Immutable;
using System.Globalization;
using NodaTime.Text;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Ledgers;
using Payday.Statements.Taking;

namespace Payday.Screens.Statements;

/// <summary>What was chosen for a line, as the form keeps it: the use, what it is for, the due's date or the notes, the lines of the account.</summary>
internal static class ChoiceText
{
    private const char Between = '|';

    // Before the key of the purpose that gives or gets it, with that key's length.
    private const char Other = '+';

    /// <summary>The text of a choice.</summary>
    public static string Of(Proposal choice) => string.Join(
        Between,
        choice.Target.Use,
        (choice.Target.Other is { Key: var other } ? string.Create(CultureInfo.InvariantCulture, $"{Other}{other.Length}{Other}{other}") : "") + (choice.Target.End?.Key ?? ""),
        choice.Due is { } due ? LocalDatePattern.Iso.Format(due.Scheduled)
            : string.Join(',', (choice.Notes ?? Notes.None).Select(note => string.Create(CultureInfo.InvariantCulture, $"{note.Key}={note.Value}"))),
        string.Join(',', choice.Lines.Select(line => line.ToString(CultureInfo.InvariantCulture))));

    /// <summary>The choice that a text stands for; null where it can't be understood, so that the line is as if nothing had been chosen.</summary>
    public static Proposal? In(string text)
    {
        // The end comes second but may hold anything: the others are counted from their sides.
        string[] parts = text.Split(Between);
        if (parts.Length < 4 || !Enum.TryParse(parts[0], out LineUse use))
        {
            return null;
        }

        string end = string.Join(Between, parts[1..^2]);
        try
        {
            (LedgerEnd? other, end) = OtherIn(end);
            var target = new LineTarget(use, end.Length == 0 ? null : LedgerEnd.FromKey(end)) { Other = other };
            return new Proposal(target, ProposalReason.Chosen, true)
            {
                Due = LocalDatePattern.Iso.Parse(parts[^2]) is { Success: true } day ? KeyOf(target.End, day.Value) : null,
                Notes = parts[^2].Contains('=', StringComparison.Ordinal) ? NotesIn(parts[^2]) : null,
                Lines = [.. parts[^1].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(Whole)],
            };
        }
        catch (Exception fault) when (fault is FormatException or OverflowException)
        {
            return null;
        }
    }

    private static (LedgerEnd? Other, string End) OtherIn(string text)
    {
        if (text.Length == 0 || text[0] != Other)
        {
            return (null, text);
        }

        int from = text.IndexOf(Other, 1) is > 0 and var at ? at + 1 : throw new FormatException();
        int length = (int)Whole(text[1..(from - 1)]);
        return length <= text.Length - from ? (LedgerEnd.FromKey(text.Substring(from, length)), text[(from + length)..]) : throw new FormatException();
    }

    private static Notes NotesIn(string text) => Notes.Of(text.Split(',').Select(part => part.Split('=') is [var value, var count]
        ? new KeyValuePair<long, int>(Whole(value), checked((int)Whole(count)))
        : throw new FormatException()));

    private static long Whole(string text) => long.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

    private static DueKey? KeyOf(LedgerEnd? end, NodaTime.LocalDate day) => end switch
    {
        LedgerEnd.At { Purpose.BillId: { } bill } => new DueKey(bill, day),
        LedgerEnd.Owed owed => new DueKey(owed.DebtId, day),
        _ => null,
    };
}
