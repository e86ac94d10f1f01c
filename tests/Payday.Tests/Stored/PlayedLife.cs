using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.ClosedPaydays;
using Payday.Core.Counts;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Core.Routines;
using Payday.Store;
using Payday.Store.Changes;
using Payday.Tests.Commands;

namespace Payday.Tests.Stored;

/// <summary>Lives a life anew, from a text: a line each with a day and a command, or what only a screen can do, with an @.</summary>
internal static partial class PlayedLife
{
    /// <summary>Lives it on the data folder of a shell.</summary>
    /// <param name="shell">The shell.</param>
    /// <param name="lines">The life.</param>
    /// <param name="file">The path of a file that is named in it.</param>
    public static void Live(TestShell shell, IEnumerable<string> lines, Func<string, string> file)
    {
        foreach (string line in lines)
        {
            string[] words = Words(line);
            shell.Today = Date(words[0]);
            if (words[1][0] == '@')
            {
                Do(shell, words[1], words[2..]);
            }
            else
            {
                shell.Run([.. words[1..].Select(word => word.Contains('.', StringComparison.Ordinal) && File.Exists(file(word)) ? file(word) : word)]).Fine();
            }
        }
    }

    private static void Do(TestShell shell, string what, string[] words)
    {
        using BookStore store = BookStore.Open(shell.Data);
        Book book = store.Load()!;
        store.Save(book, what switch
        {
            "@undo" => Undoing.Of(book, Last(book, words[0]), shell.Today, words[1]).Value!,
            "@reopen" => Reopening.Of(book, shell.Today).Value!,
            "@close" => Closing.Of(Routine.Plan(book, book.Draft!).Value!).Value!,
            "@draft" => book with { Draft = Draft(book, words) },
            "@settle" => Differences.Settle(
                book, long.Parse(words[0], CultureInfo.InvariantCulture), words[1] == "TurnedUp" ? DifferenceEnd.TurnedUp : DifferenceEnd.Explained, shell.Today).Value!,
            "@countdraft" => book with { Weeks = book.Weeks with { Draft = CountDraft(book, shell.Today, words) } },
            "@reconciling" => book with { Weeks = book.Weeks with { Reconciling = Reconciling(book, words) } },
            "@form" => book with { Weeks = book.Weeks.With(Form(words)) },
            _ => throw new ArgumentOutOfRangeException(nameof(what), what, "A life doesn't know this."),
        });
    }

    /// <summary>The draft of the next payday with decisions such as <c>fill=food=10</c>.</summary>
    public static RoutineDraft Draft(Book book, IEnumerable<string> words) =>
        words.Where(word => word.Length > 0).Aggregate(Routine.Begun(book).Value!, (draft, word) => Decided(book, draft, word.Split('=')));

    /// <summary>What was counted on a day, such as <c>food=12.50=stays</c>.</summary>
    public static CountDraft CountDraft(Book book, LocalDate day, IEnumerable<string> words) => words.Select(word => word.Split('=')).Aggregate(
        new CountDraft(day),
        (draft, parts) => draft.With(new PotId(parts[0]), parts[2..].Aggregate(new CountEntry(Amount(book, parts[1])), (entry, part) => Counted(book, entry, part.Split('+')))));

    private static ReconciliationDraft Reconciling(Book book, string[] words) =>
        new(Date(words[0]), Amount(book, words[1]), [.. words[2..].Select(word => long.Parse(word, CultureInfo.InvariantCulture))]);

    private static FormDraft Form(string[] words) =>
        new(words[0], words[1..].Select(word => word.Split('=')).ToImmutableSortedDictionary(parts => parts[0], parts => parts[1], StringComparer.Ordinal));

    private static RoutineDraft Decided(Book book, RoutineDraft draft, string[] parts) => parts[0] switch
    {
        "step" => draft with { Step = parts[1] == "Pots" ? RoutineStep.Pots : RoutineStep.Withdrawal },
        "income" => draft with { Incomes = draft.Incomes.SetItem(new SourceId(parts[1]), Amount(book, parts[2])) },
        "oneoff" => draft with { OneOffs = draft.OneOffs.SetItem(parts[1], Amount(book, parts[2])) },
        "due" => draft with
        {
            Dues = draft.Dues.SetItem(
                new DueKey(new BillId(parts[1]), Date(parts[2])),
                new DueDecision(parts[3].Length == 0 ? null : Amount(book, parts[3]), parts[4].Length == 0 ? null : parts[4] == "true")),
        },
        "mode" => draft with { SetAsides = SetAsideMode.AsTheyFall },
        "frombuffer" => draft with { FromBuffer = Amount(book, parts[1]) },
        "minimum" => draft with { Minimums = draft.Minimums.SetItem(new DueKey(new DebtId(parts[1]), Date(parts[2])), Amount(book, parts[3])) },
        "debt" => draft with { DebtPayments = draft.DebtPayments.SetItem(new DebtId(parts[1]), Amount(book, parts[2])) },
        "fill" => draft with { Fills = draft.Fills.SetItem(new PotId(parts[1]), Amount(book, parts[2])) },
        "place" => draft with { Placements = (draft.Placements ?? []).Add(new Placement(Target(parts[1], parts[2]), Amount(book, parts[3]))) },
        "note" => draft with { Notes = draft.Notes.SetItem(new PartKey(new PotId(parts[1]), Date(parts[2])), Notes(parts[3], parts[4])) },
        "home" => draft with { LeavesNotesAtHome = true },
        "teller" => draft with { AsksATeller = true },
        "owed" => draft with { UsesOwedBack = true },
        _ => throw new ArgumentOutOfRangeException(nameof(parts), parts[0], "No step decides this."),
    };

    private static CountEntry Counted(Book book, CountEntry entry, string[] parts) => parts[0] switch
    {
        "notes" => entry with { Notes = Notes(parts[1], parts[2]) },
        "missing" => entry with { Missing = Amount(book, parts[1]), DifferenceName = parts[2] },
        "found" => entry with { IsFind = true, DifferenceName = parts[1] },
        "stays" => entry with { Then = CountThen.Stays },
        "to" => entry with { Then = new CountThen(Target(parts[1], parts.Length > 2 ? parts[2] : "")) },
        _ => throw new ArgumentOutOfRangeException(nameof(parts), parts[0], "No count has this."),
    };

    private static MoveTarget Target(string word, string id) => word switch
    {
        "Debt" => MoveTarget.Debt(new DebtId(id)),
        "Pot" => MoveTarget.Pot(new PotId(id)),
        _ => MoveTarget.Buffer,
    };

    private static Notes Notes(string note, string count) =>
        Core.Cash.Notes.Of(long.Parse(note, CultureInfo.InvariantCulture), int.Parse(count, CultureInfo.InvariantCulture));

    private static long Last(Book book, string end) =>
        book.Ledger.Movements.Last(movement => movement.To.Key.EndsWith(end, StringComparison.Ordinal)).Number;

    private static Money Amount(Book book, string text) => Money.ParsePlain(text, book.Household.Currency).Value;

    private static LocalDate Date(string text) => LocalDatePattern.Iso.Parse(text).Value;

    // Quotes hold words together, as in a shell.
    private static string[] Words(string line) => [.. Word().Matches(line).Select(word => word.Value.Trim('"'))];

    [GeneratedRegex(@"""[^""]*""|\S+")]
    private static partial Regex Word();
}
