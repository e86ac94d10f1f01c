using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Statements.Taking;

namespace Payday.Commands;

/// <summary>What a line of the bank's is to become, as it is written on a command line.</summary>
internal static class TargetInput
{
    private const string Line = "line ";

    /// <summary>A target by its name: a pot, bill, debt, income source or the buffer; or fee, interest, gift, transfer, income, leave.</summary>
    public static Result<LineTarget> Read(Book book, string text)
    {
        string name = text.Trim();
        if (book.Household.Sources.FirstOrDefault(source => string.Equals(source.Name, name, StringComparison.OrdinalIgnoreCase)) is { } pays)
        {
            return Result.Of(new LineTarget(LineUse.Income, LedgerEnd.PaidBy(pays.Id)));
        }

        Result<LedgerEnd> end = PurposeNames.Find(book, [.. MoveEnds.To(book).Where(end => end != MoveEnds.Loose)], name);
        return end.Ok ? Result.Of(new LineTarget(LineUse.For, end.Value))
            : Array.Find(TargetText.Words, pair => string.Equals(pair.Word, name, StringComparison.OrdinalIgnoreCase)) is { Target: { } target } ? Result.Of(target)
            : Result.Refused<LineTarget>(end.Faults);
    }

    /// <summary>What a line is to become: a target, or <c>line 12</c> for the line of the account that it is.</summary>
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

        return Read(book, name).Map(target => new Proposal(target, ProposalReason.Chosen, true));
    }
}
