using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>Which lines of a statement were known before, so that a file read twice or two files that overlap change nothing.</summary>
public static class Repeats
{
    // A bank that changes a line's day moves it over a weekend; a pending line is booked within days.
    private const int MostDaysMoved = 5;
    private const int MostDaysPending = 14;

    /// <summary>Holds a statement's booked lines against the lines known of its account.</summary>
    /// <param name="lines">The new statement's booked lines.</param>
    /// <param name="known">The booked lines known of the account.</param>
    /// <param name="pending">The lines that were pending when last seen.</param>
    /// <returns>A verdict for each line, in their order. Each known line is used once.</returns>
    public static ImmutableArray<LineRepeat> Of(
        IReadOnlyList<StatementLine> lines, IReadOnlyList<StatementLine> known, IReadOnlyList<StatementLine> pending)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(pending);
        var verdicts = new LineRepeat?[lines.Count];
        var isUsed = new bool[known.Count];
        ByKey(lines, known, verdicts, isUsed);
        ILookup<Money, int> byAmount = Enumerable.Range(0, known.Count).Where(i => !isUsed[i]).ToLookup(i => known[i].Amount);
        Take(lines, verdicts, known, isUsed, byAmount, RepeatKind.Repeated, HasSameId);
        var isBooked = new bool[pending.Count];
        ILookup<Money, int> pendingByAmount = Enumerable.Range(0, pending.Count).ToLookup(i => pending[i].Amount);
        Take(lines, verdicts, pending, isBooked, pendingByAmount, RepeatKind.Booked, WasPending);
        Take(lines, verdicts, known, isUsed, byAmount, RepeatKind.Unsure, (line, old) => line.Date == old.Date);
        return [.. verdicts.Select((verdict, i) => verdict ?? new LineRepeat(lines[i], RepeatKind.New, null))];
    }

    // Day, amount and words, with ordinals: of two twins the first is the first, whether both or one were known.
    private static void ByKey(IReadOnlyList<StatementLine> lines, IReadOnlyList<StatementLine> known, LineRepeat?[] verdicts, bool[] isUsed)
    {
        var places = new Dictionary<LineKey, int>();
        LineKey[] keys = LineKey.Of(known);
        for (int i = 0; i < keys.Length; i++)
        {
            places.TryAdd(keys[i], i);
        }

        LineKey[] wanted = LineKey.Of(lines);
        for (int i = 0; i < wanted.Length; i++)
        {
            if (places.TryGetValue(wanted[i], out int at))
            {
                verdicts[i] = new LineRepeat(lines[i], RepeatKind.Repeated, known[at]);
                isUsed[at] = true;
            }
        }
    }

    private static void Take(
        IReadOnlyList<StatementLine> lines, LineRepeat?[] verdicts, IReadOnlyList<StatementLine> known, bool[] isUsed,
        ILookup<Money, int> byAmount, RepeatKind kind, Func<StatementLine, StatementLine, bool> isSame)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (verdicts[i] is not null)
            {
                continue;
            }

            foreach (int at in byAmount[lines[i].Amount].Where(at => !isUsed[at] && isSame(lines[i], known[at])).Take(1))
            {
                isUsed[at] = true;
                verdicts[i] = new LineRepeat(lines[i], kind, known[at]);
            }
        }
    }

    // The id alone joins nothing: amount and nearly the day must agree too.
    private static bool HasSameId(StatementLine line, StatementLine known) =>
        line.BankId.Length > 0 && line.BankId == known.BankId && Math.Abs(Period.DaysBetween(known.Date, line.Date)) <= MostDaysMoved;

    private static bool WasPending(StatementLine line, StatementLine pending) =>
        Period.DaysBetween(pending.Date, line.Date) is >= -1 and <= MostDaysPending;
}
