using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Lists;
using Payday.Reports;
using Payday.Statements.Taking;

namespace Payday.Commands;

/// <summary>What a line of the bank's is to become, as it is written on a command line.</summary>
internal static class TargetInput
{
    private const string Line = "line ";
    private const string In = " in ";

    private static readonly string[] OtherWords = [TargetText.From, " to "];

    /// <summary>
    /// A target by its name: a pot, bill, debt, income source or the buffer; or fee, interest, gift, transfer, income, cash return,
    /// leave; or <c>cash POT</c>. Cash, a debt and a transfer may name the purpose that gives or gets it: <c>cash Food from Reserve</c>.
    /// </summary>
    public static Result<LineTarget> Read(Book book, string text)
    {
        Result<LineTarget> whole = Plain(book, text.Trim());
        return whole.Ok || WithOther(book, text.Trim()) is not { } with ? whole : with;
    }

    /// <summary>What a line is to become: a target, cash also with its notes, <c>cash Food in 20=2,10=1</c>; or <c>line 12</c> for the line of the account that it is.</summary>
    public static Result<Proposal> Choice(Book book, string text)
    {
        string name = text.Trim();
        if (name.StartsWith(Line, StringComparison.OrdinalIgnoreCase)
            && name[Line.Length..].Split('+') is var parts
            && Array.TrueForAll(parts, part => long.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out _)))
        {
            return Result.Of(new Proposal(LineTarget.Leave, ProposalReason.Chosen, true)
            {
                Lines = [.. parts.Select(part => long.Parse(part, NumberStyles.None, CultureInfo.InvariantCulture))],
            });
        }

        Result<LineTarget> target = Read(book, name);
        if (!target.Ok && name.LastIndexOf(In, StringComparison.OrdinalIgnoreCase) is > 0 and var at && name.Contains('=', StringComparison.Ordinal))
        {
            Result<Notes> notes = NoteList.Read(book.Household, name[(at + In.Length)..]);
            return Read(book, name[..at]).Then(cash => cash.Use != LineUse.Cash ? Result.Refused<Proposal>(new MoveFault.NoNotesMove())
                : notes.Map(named => new Proposal(cash, ProposalReason.Chosen, true) { Notes = named }));
        }

        return target.Map(one => new Proposal(one, ProposalReason.Chosen, true));
    }

    private static Result<LineTarget> Plain(Book book, string name)
    {
        if (book.Household.Sources.FirstOrDefault(source => string.Equals(source.Name, name, StringComparison.OrdinalIgnoreCase)) is { } pays)
        {
            return Result.Of(new LineTarget(LineUse.Income, LedgerEnd.PaidBy(pays.Id)));
        }

        ImmutableArray<LedgerEnd> ends = MoveEnds.To(book);
        Result<LedgerEnd> end = PurposeNames.Find(book, [.. ends.Where(end => end != MoveEnds.Loose)], name);
        if (end.Ok)
        {
            return Result.Of(new LineTarget(LineUse.For, end.Value));
        }

        if (Array.Find(TargetText.Words, pair => string.Equals(pair.Word, name, StringComparison.OrdinalIgnoreCase)) is { Target: { } target })
        {
            return Result.Of(target);
        }

        return name.StartsWith(TargetText.Cash, StringComparison.OrdinalIgnoreCase)
            ? PurposeNames.Find(book, [.. ends.Where(end => end is LedgerEnd.At { Place: Place.Cash })], name[TargetText.Cash.Length..]).Map(cash => new LineTarget(LineUse.Cash, cash))
            : Result.Refused<LineTarget>(end.Faults);
    }

    // Names may hold the words themselves, so each place is tried; what is wrong is told of the last.
    private static Result<LineTarget>? WithOther(Book book, string text)
    {
        Result<LineTarget>? told = null;
        foreach (string word in OtherWords)
        {
            for (int at = text.LastIndexOf(word, StringComparison.OrdinalIgnoreCase); at > 0; at = text.LastIndexOf(word, at - 1, StringComparison.OrdinalIgnoreCase))
            {
                Result<LineTarget> target = Plain(book, text[..at]);
                if (target is not { Value: { Use: LineUse.Cash or LineUse.Transfer } or { Use: LineUse.For, End: LedgerEnd.Owed } })
                {
                    continue;
                }

                Result<LedgerEnd> other = PurposeNames.Find(book, TargetText.Others(book), text[(at + word.Length)..]);
                if (other.Ok)
                {
                    return Result.Of(target.Value with { Other = other.Value });
                }

                told = Result.Refused<LineTarget>(other.Faults);
            }
        }

        return told;
    }
}
