using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Cash;
using Payday.Core.CashReturns;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Faults;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store;
using Payday.Tests.Commands;
using Payday.Tests.Stored;
using Payday.Texts;

namespace Payday.Tests.Sentences;

/// <summary>Runs lines of a text on a shell, and gives each with what was refused.</summary>
/// <remarks>
/// A line is a day and a command; with an @ it is what only a screen can do; <c>file</c> and <c>latin1</c> write one, <c>stdin</c> hands
/// a text over, <c>import</c> takes a change of the household. Of what went well only that is given, its text too where <c>text</c> stands before the day.
/// </remarks>
internal static partial class Script
{
    private static Result<Book> Nothing => Result.Refused<Book>(new ArgumentFault.NoSuchPot("(there is none)", []));

    public static IEnumerable<string> Run(TestShell shell, string name, [CallerFilePath] string caller = "")
    {
        string input = "";
        foreach (string line in File.ReadLines(Path.Combine(Path.GetDirectoryName(caller)!, "Scripts", name + ".txt")))
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            yield return line;
            bool isShown = line.StartsWith("text ", StringComparison.Ordinal);
            string[] words = [.. Word().Matches(line).Skip(isShown ? 1 : 0).Select(word => word.Value.Trim('"').Replace("FOLDER", shell.In(""), StringComparison.Ordinal))];
            switch (words[0])
            {
                case "file":
                    shell.File(words[1], Unescaped(words[2]));
                    continue;
                case "latin1":
                    File.WriteAllBytes(shell.In(words[1]), System.Text.Encoding.Latin1.GetBytes(Unescaped(words[2])));
                    continue;
                case "stdin":
                    input = Unescaped(line["stdin ".Length..]);
                    continue;
                case "import":
                    string export = shell.Run("export").Out;
                    shell.File("changed.json", ChangedFile.Of(export, line["import ".Length..]));
                    words = ["import", shell.In("changed.json")];
                    break;
                default:
                    shell.Today = LocalDatePattern.Iso.Parse(words[0]).Value;
                    words = words[1..];
                    break;
            }

            if (words[0][0] == '@')
            {
                yield return Do(shell, words[0], words[1..]) is { } fault ? "  ! " + fault : "  done";
                continue;
            }

            Ran ran = shell.RunOn(input, words);
            input = "";
            foreach (string said in ran.Exit == 0 && !isShown ? [] : (ran.Out + ran.Error).TrimEnd('\n').Split('\n'))
            {
                yield return "  " + said.Replace(shell.In("").TrimEnd('/'), "FOLDER", StringComparison.Ordinal);
            }

            yield return string.Create(CultureInfo.InvariantCulture, $"  = {ran.Exit}");
        }
    }

    private static string? Do(TestShell shell, string what, string[] words)
    {
        using BookStore store = BookStore.Open(shell.Data);
        Book book = store.Load()!;
        LocalDate today = shell.Today;
        switch (what)
        {
            case "@undo":
                Result<Book> undone = Undoing.Of(book, NumberOf(book, words[0]), today, words[1]);
                return undone.Ok ? Stored(store, book, undone.Value) : undone.Fault.Said(book.Household.Settings.Numbers);
            case "@reopen":
                Result<Book> reopened = Reopening.Of(book, today);
                return reopened.Ok ? Stored(store, book, reopened.Value) : reopened.Fault.Said(book.Household.Settings.Numbers);
            case "@close":
                Result<RoutinePlan> plan = Routine.Plan(book, PlayedLife.Draft(book, words));
                Result<Book> closed = plan.Then(Closing.Of);
                return closed.Ok ? Stored(store, book, closed.Value) : string.Join(' ', closed.Faults.Select(fault => fault.Said(book.Household.Settings.Numbers)));
            case "@again":
                Result<Recomputed> again = Recomputed.After(Routine.Plan(book, PlayedLife.Draft(book, words[0].Split('|'))).Value!, PlayedLife.Draft(book, words[1].Split('|')));
                return again.Ok ? string.Join(' ', again.Value.Dropped.Select(one => one.Said(book.Household.Settings.Numbers))) : again.Fault.Said(book.Household.Settings.Numbers);
            case "@place":
                Result<ImmutableArray<Placement>> placed = Placing.Set(Routine.Plan(book, PlayedLife.Draft(book, [])).Value!, MoveTarget.Buffer, Amount(book, words[0]));
                return placed.Ok ? null : placed.Fault.Said(book.Household.Settings.Numbers);
            default:
                return Took(store, book, BetweenPaydays(book, what, words, today));
        }
    }

    private static Result<Book> BetweenPaydays(Book book, string what, string[] words, LocalDate today) => what switch
    {
        "@settle" => Differences.Settle(book, Number(words[0]), words[1] == "turned-up" ? DifferenceEnd.TurnedUp : DifferenceEnd.Explained, today),
        "@settle-undo" => Differences.LastSettled(book) is { } last ? Differences.Reopen(book, last, today) : Nothing,
        "@count-undo" => CountUndo.Of(book, CountUndo.Last(book), today),
        "@count" => CountPlan.Of(book, PlayedLife.CountDraft(book, today, words)).Confirm(),
        "@purchase" => Purchasing.Enter(book, Entry(book, words)),
        "@purchase-change" => Purchasing.Change(book, Number(words[0]), Entry(book, words[1..]), today),
        "@purchase-undo" => Purchasing.Undo(book, Number(words[0]), today),
        "@refund" => CardRefunds.Enter(book, Entry(book, words)),
        "@fill" => WalletFills.Mark(book, Key(words), words[3] == "done" ? FillState.Done : FillState.Skipped, today),
        "@fill-undo" => WalletFills.Unmark(book, Key(words), today),
        "@return" => ReturnPlan.Of(book, words.Aggregate(ReturnDraft.AsPlanned, (draft, word) => word.Split('=') is [var pot, var note, var count]
            ? draft with { Picked = draft.Picked.SetItem(new PotId(pot), Notes.Of(Number(note), (int)Number(count))) }
            : draft with { Leaves = draft.Leaves.Add(new PotId(word)) })).Confirm(today),
        "@return-undo" => book.Weeks.Returns.LastOrDefault(back => !back.Undone) is { } back ? ReturnUndo.Of(book, back, today) : Nothing,
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "A script doesn't know this."),
    };

    private static string? Took(BookStore store, Book before, Result<Book> after) =>
        after.Ok ? Stored(store, before, after.Value) : after.Fault.Said(before.Household.Settings.Numbers);

    private static string? Stored(BookStore store, Book before, Book after)
    {
        store.Save(before, after);
        return null;
    }

    private static PurchaseEntry Entry(Book book, string[] words) =>
        new(LocalDatePattern.Iso.Parse(words[0]).Value, words[1] == "buffer" ? null : new PotId(words[1]), Amount(book, words[2]), words[3]);

    private static FillKey Key(string[] words) =>
        new(LocalDatePattern.Iso.Parse(words[0]).Value, words[1] == "-" ? null : LocalDatePattern.Iso.Parse(words[1]).Value, new PotId(words[2]));

    // A movement by its number, or the last one to such an end.
    private static long NumberOf(Book book, string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number)
        ? number
        : book.Ledger.Movements.LastOrDefault(movement => movement.To.Key == text)?.Number ?? 0;

    private static Money Amount(Book book, string text) => Money.ParsePlain(text, book.Household.Currency).Value;

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);

    private static string Unescaped(string text) => Regex.Unescape(text);

    [GeneratedRegex(@"""[^""]*""|\S+")]
    private static partial Regex Word();
}
