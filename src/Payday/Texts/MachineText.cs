using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Faults;

namespace Payday.Texts;

/// <summary>A machine in one line: its notes, and behind a slash the most it gives in one visit, e.g. <c>20 50 / 500</c>.</summary>
internal static class MachineText
{
    /// <summary>The line of a machine.</summary>
    public static string Of(CashSource.Machine machine, NumberStyle style) =>
        string.Join(' ', machine.Notes.Select(note => style.Written(note.ToPiece()))) + (machine.Limit is { } limit ? " / " + style.Written(limit.ToPiece()) : "");

    /// <summary>What stands where nothing was typed yet: of the notes in use the one that is nearest to twenty, without a limit.</summary>
    public static string Usual(CashPieces cash, NumberStyle style) =>
        Of(new CashSource.Machine([cash.Notes.OrderBy(note => Math.Abs(note.ToDecimal() - 20)).First()], null), style);

    /// <summary>Reads a line.</summary>
    public static Result<CashSource.Machine> Read(string text, CashPieces cash, NumberStyle style)
    {
        string[] sides = text.Split('/');
        Currency currency = cash.Notes[0].Currency;
        if (sides.Length > 2)
        {
            return Result.Refused<CashSource.Machine>(new NotesTextFault.TwoLimits());
        }

        var notes = ImmutableArray.CreateBuilder<Money>();
        foreach (string word in sides[0].Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            Result<Money> note = Money.ParseSum(word, currency, style);
            if (!note.Ok || !cash.Notes.Contains(note.Value))
            {
                return Result.Refused<CashSource.Machine>(new NotesTextFault.NotInUse(word, [.. cash.Notes.Select(known => style.Written(known.ToPiece()))]));
            }

            notes.Add(note.Value);
        }

        if (notes.Count == 0)
        {
            return Result.Refused<CashSource.Machine>(new NotesTextFault.NoMachineNotes());
        }

        if (sides.Length == 1)
        {
            return Result.Of(new CashSource.Machine([.. notes.Distinct().OrderDescending()], null));
        }

        Result<Money> limit = Money.ParseSum(sides[1].Trim(), currency, style);
        return limit.Ok && limit.Value >= notes.Min()
            ? Result.Of(new CashSource.Machine([.. notes.Distinct().OrderDescending()], limit.Value))
            : Result.Refused<CashSource.Machine>(new NotesTextFault.NoLimit());
    }
}
