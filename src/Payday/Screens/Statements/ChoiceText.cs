using System.Collections.Immutable;
using System.Globalization;
using NodaTime.Text;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Statements.Taking;

namespace Payday.Screens.Statements;

/// <summary>What was chosen for a line, as the form keeps it: the use, what it is for, the due's date, the lines of the account.</summary>
internal static class ChoiceText
{
    private const char Between = '|';

    /// <summary>The text of a choice.</summary>
    public static string Of(Proposal choice) => string.Join(
        Between,
        choice.Target.Use,
        choice.Target.End?.Key ?? "",
        choice.Due is { } due ? LocalDatePattern.Iso.Format(due.Scheduled) : "",
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
            var target = new LineTarget(use, end.Length == 0 ? null : LedgerEnd.FromKey(end));
            return new Proposal(target, ProposalReason.Chosen, true)
            {
                Due = LocalDatePattern.Iso.Parse(parts[^2]) is { Success: true } day ? KeyOf(target.End, day.Value) : null,
                Lines = [.. parts[^1].Split(',', StringSplitOptions.RemoveEmptyEntries).Select(line => long.Parse(line, NumberStyles.None, CultureInfo.InvariantCulture))],
            };
        }
        catch (Exception fault) when (fault is FormatException or OverflowException)
        {
            return null;
        }
    }

    private static DueKey? KeyOf(LedgerEnd? end, NodaTime.LocalDate day) => end switch
    {
        LedgerEnd.At { Purpose.BillId: { } bill } => new DueKey(bill, day),
        LedgerEnd.Owed owed => new DueKey(owed.DebtId, day),
        _ => null,
    };
}
