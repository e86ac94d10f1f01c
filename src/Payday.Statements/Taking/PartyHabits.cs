using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.StatementTaking;
using Payday.Statements.Habits;
using Payday.Statements.Lines;

namespace Payday.Statements.Taking;

/// <summary>What lines of the bank's became before, party by party, by the statements that were taken.</summary>
internal sealed class PartyHabits
{
    // Of a habit the last ones count: it may have changed.
    private const int MostLooked = 4;

    private readonly Dictionary<(string Party, bool ComesIn), List<LineTarget>> byParty = [];
    private readonly Dictionary<LineTarget, TakenLine> last = [];

    public PartyHabits(Book book)
    {
        AccountLines lines = AccountLines.Of(book);
        foreach (TakenLine line in TakenLines.Of(book).Where(line => line.Lines.Length == 1))
        {
            if (lines[line.Lines[0]] is not { } entered || TargetOf(entered, book) is not { } target)
            {
                continue;
            }

            last[target] = line;
            if (KeyOf(line) is { Length: > 0 } party)
            {
                (byParty.TryGetValue((party, line.Amount.IsPositive), out List<LineTarget>? known) ? known : byParty[(party, line.Amount.IsPositive)] = []).Add(target);
            }
        }
    }

    /// <summary>What lines of its party last became, where that was always the same, and how often of the last few; null where it wasn't, or none is known.</summary>
    public (LineTarget Target, int Times)? Of(StatementLine line)
    {
        if (!byParty.TryGetValue((KeyOf(line), line.Amount.IsPositive), out List<LineTarget>? known))
        {
            return null;
        }

        LineTarget[] latest = [.. known.TakeLast(MostLooked)];
        return Array.TrueForAll(latest, target => target == latest[0]) ? (latest[0], latest.Length) : null;
    }

    /// <summary>The mandate, or the other side's account, by which the bank last showed something like it; empty where none is known.</summary>
    public string MandateOf(LineTarget? target) => target is not null && last.TryGetValue(target, out TakenLine? line) ? line.Mandate : "";

    /// <summary>The name by which the bank last showed something like it; empty where none is known.</summary>
    public string PartyOf(LineTarget? target) => target is not null && last.TryGetValue(target, out TakenLine? line) ? line.Party : "";

    /// <summary>What a line of the account was written down as; null where a line of a statement can't become that.</summary>
    public static LineTarget? TargetOf(AccountLine line, Book book) => line.Other switch
    {
        LedgerEnd.At { Place: Place.Cash } cash => CashOf(line, cash, book),
        LedgerEnd.Outside { BillId: { } bill } => new LineTarget(LineUse.For, LedgerEnd.InAccount(Purpose.SetAside(bill))),
        LedgerEnd.Owed owed => new LineTarget(LineUse.For, owed),
        LedgerEnd.Outside { SourceId: { } source } => new LineTarget(LineUse.Income, book.Household.Sources.Any(known => known.Id == source) ? line.Other : null),
        LedgerEnd.Outside { Kind: OutsideKind.Spending, PotId: { } pot } =>
            book.Household.Pots.FirstOrDefault(known => known.Id == pot) is { } known ? new LineTarget(LineUse.For, MoveEnds.OfPot(known)) : null,
        LedgerEnd.Outside { Kind: OutsideKind.Spending } => new LineTarget(LineUse.For, MoveEnds.Buffer),
        LedgerEnd.Outside { Entry: EntryKind.Fee } => new LineTarget(LineUse.Fee),
        LedgerEnd.Outside { Entry: EntryKind.Interest } => new LineTarget(LineUse.Interest),
        LedgerEnd.Outside { Entry: EntryKind.Gift } => new LineTarget(LineUse.Gift),
        LedgerEnd.Outside { Entry: EntryKind.Transfer } => new LineTarget(LineUse.Transfer),
        _ => null,
    };

    // What a payday fetches has its own slip: it is found by its amount, and no habit.
    private static LineTarget? CashOf(AccountLine line, LedgerEnd.At cash, Book book) => (line.Payday, cash.Purpose) switch
    {
        ({ }, _) => null,
        (_, { Kind: PurposeKind.OwedBack }) => new LineTarget(LineUse.Return),
        (_, { Kind: PurposeKind.Buffer }) => new LineTarget(LineUse.Cash, MoveEnds.Loose),
        (_, { PotId: { } pot }) when book.Household.Pots.FirstOrDefault(known => known.Id == pot && known.Place == Place.Cash) is { } known => new LineTarget(LineUse.Cash, MoveEnds.OfPot(known)),
        _ => null,
    };

    private static string KeyOf(TakenLine line) => PartyKey.Of(new StatementLine(line.Date, line.Amount) { Party = line.Party, Text = line.Text, Mandate = line.Mandate });

    private static string KeyOf(StatementLine line) => PartyKey.Of(line with { Mandate = MandateOf(line), PartyAccount = "" });

    /// <summary>The mandate of a line as it is kept: else the other side's account.</summary>
    public static string MandateOf(StatementLine line) => line.Mandate.Length > 0 ? line.Mandate : line.PartyAccount;
}
