using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Shell;

namespace Payday.Screens.Statements;

/// <summary>The two ends of a move that a line of the bank's is: what gives the money, then what gets it, one of them outside this account.</summary>
internal static class MovePicks
{
    /// <summary>Asks for both.</summary>
    /// <param name="book">The book.</param>
    /// <param name="comesIn">Whether the money came in; null for a rule, where what gives it says so.</param>
    /// <param name="done">Takes what lines become, and leads on.</param>
    public static PickScreen<LedgerEnd?> Of(Book book, bool? comesIn, Func<LineTarget, Way> done) => new(
        "What gives the money",
        [
            .. comesIn != true ? TargetText.Others(book).Select(end => Item(book, end)) : [],
            .. comesIn != false ? Outside(book) : [],
        ],
        null,
        from => new Way.Instead(To(book, from, done)));

    private static PickScreen<LedgerEnd?> To(Book book, LedgerEnd? from, Func<LineTarget, Way> done)
    {
        bool goesOut = from is LedgerEnd.At { Place: Place.Account };
        return new PickScreen<LedgerEnd?>(
            $"What gets the money from {(from is null ? "another account" : PurposeNames.Of(book.Household, from))}",
            goesOut
                ? [.. Outside(book), .. book.Household.Debts.Select(debt => Item(book, new LedgerEnd.Owed(debt.Id)))]
                : [.. MoveEnds.To(book).Where(end => end is LedgerEnd.At { Place: Place.Account }).Select(end => Item(book, end))],
            null,
            to => done((goesOut, goesOut ? to : from) switch
            {
                (_, null) => new LineTarget(LineUse.Transfer) { Other = goesOut ? from : to },
                (true, LedgerEnd.Owed owed) => new LineTarget(LineUse.For, owed) { Other = from },
                (_, { } cash) => new LineTarget(LineUse.Cash, cash) { Other = goesOut ? from : to },
            }));
    }

    private static ImmutableArray<PickItem<LedgerEnd?>> Outside(Book book) =>
        [.. TargetPicks.CashEnds(book).Select(end => Item(book, end)), new(null, "Another account", "not in this book")];

    private static PickItem<LedgerEnd?> Item(Book book, LedgerEnd end) =>
        new(end, PurposeNames.Of(book.Household, end), $"{MoveEnds.Has(book, end).ToString(book.Household.Settings.Numbers)}  {PurposeNames.Sort(end)}");
}
