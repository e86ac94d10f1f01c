using Payday.Core.Amounts;
using Payday.Core.Undo;
using Payday.Text;

namespace Payday.Texts;

/// <summary>What is said of what can't be taken back, or not yet, and what leads to what is in the way.</summary>
internal static class UndoTexts
{
    /// <summary>One sentence: what is in the way, and what to do.</summary>
    public static string Of(Obstacle obstacle, NumberStyle style) => obstacle switch
    {
        Obstacle.NoSuchPurchase no => $"There is no card purchase {no.Number}.",
        Obstacle.PurchaseUndone undone => $"Card purchase {undone.Number} is undone already.",
        Obstacle.NoSuchPayment no => $"There is no payment {no.Number}.",
        Obstacle.PaymentUndone undone => $"Payment {undone.Number} is undone already.",
        Obstacle.PaidSince since => $"More was paid on the same due since; undo payment {since.Later.Number} first.",
        Obstacle.NoSuchMove no => $"There is no move {no.Number}.",
        Obstacle.NoSuchEntry no => $"There is no account entry {no.Number}.",
        Obstacle.UndoneAlready undone => $"{Upper(Name(undone.What))} is undone already.",
        Obstacle.LooseCounted seen => $"The loose notes were counted on {DateText.Day(seen.Count.Date)} with {Name(seen.What)} in it; take that count back first.",
        Obstacle.NotMarked not => $"The fill of {not.Fill.Pot} for {DateText.Day(not.Fill.Day)} isn't marked, so there is nothing to take back.",
        Obstacle.Counted seen => $"{seen.Count.Pot} was counted on {DateText.Day(seen.Count.Date)} with {Name(seen.What)} in it; take that count back first.",
        Obstacle.GoneOn gone => $"The money of {Name(gone.What)} has gone on since, to {Owner(gone.To)}; take that back first.",
        Obstacle.CashInPots cash => $"The cash for {Cash(cash.What)} went into pots on {Name(cash.Payday)}; reopen that payday first.",
        Obstacle.CashAtBank cash => $"The cash for {Cash(cash.What)} was taken to the bank on {DateText.Day(cash.Return.Date)}; take that cash return back first.",
        Obstacle.RefundSince refund => $"Refund {refund.Refund.Number} came after {Name(refund.Return)}; undo the refund first.",
        Obstacle.LaterRefund later => $"Refund {later.Later.Number} of the same pot came after it; undo that first.",
        Obstacle.Refunded refunded => $"A refund lowered what {Name(refunded.Purchase)} leaves to pay back; undo the refund first.",
        Obstacle.RefundReturned returned =>
            returned.Return is BookEntry.Payday
                ? $"What was left of refund {returned.Refund.Number}'s purchase went into pots on {Name(returned.Return)}; reopen that payday first."
                : $"What was left of refund {returned.Refund.Number}'s purchase was taken to the bank by {Name(returned.Return)}; take that back first.",
        Obstacle.AtBank seen => $"{Upper(Name(seen.What))} is at the bank by the reconciliation of {DateText.Day(seen.Reconciliation.Date)}; take that back first.",
        Obstacle.OfStatement of => $"The account was compared with the bank on {DateText.Day(of.Reconciliation.Date)} by {Name(of.Statement)}; take that back as a whole.",
        Obstacle.StatementSince since => $"{Upper(Name(since.Statement))} can't be taken back yet: {Name(since.Later)} came later; take that back first.",
        Obstacle.ReconciledSince since => $"The account was compared with the bank again on {DateText.Day(since.Later.Date)}; take that back first.",
        Obstacle.DifferenceCleared cleared => $"The difference of {Name(cleared.Difference.Counted)} was cleared up since; take that back first.",
        Obstacle.PartOf part => $"Ledger line {part.Number} belongs to {Owner(part.Whole)}, so it isn't undone alone; take that back as a whole.",
        Obstacle.NotesGoneOn gone =>
            $"The notes of the payday of {DateText.Day(gone.Payday)} have gone on: {Owner(gone.Later)} was entered since; take that back first.",
        Obstacle.WrittenSince since => $"The payday of {DateText.Day(since.Payday)} can't be reopened: {Owner(since.Later)} {(since.Later is BookEntry.Received ? "were" : "was")} written since and may depend on it; "
            + (since.Later is BookEntry.Movement ? "undo that first." : "take that back first."),
        _ => throw new ArgumentOutOfRangeException(nameof(obstacle), obstacle, "There is no text for it."),
    };

    /// <summary>The sentence with the keys that lead to what is in the way.</summary>
    public static string WithKeys(Obstacle obstacle, NumberStyle style) => Together(Of(obstacle, style), obstacle.First is { } first ? Keys(first) : "");

    /// <summary>The sentence with the command that leads to what is in the way.</summary>
    public static string WithCommands(Obstacle obstacle, NumberStyle style) => Together(Of(obstacle, style), obstacle.First is { } first ? Command(first) : "");

    /// <summary>The keys by which an entry is taken back.</summary>
    public static string Keys(BookEntry entry) => entry switch
    {
        BookEntry.Count => "On home: w, then u.",
        BookEntry.Fill => "On home: f, then u on that fill.",
        BookEntry.Purchase => "On home: b, then u on it.",
        BookEntry.Payment => "On home: q, then u on it.",
        BookEntry.Return => "On home: r, then u.",
        BookEntry.Received => "On home: f, then g, then u.",
        BookEntry.Difference => "On home: w, then g, then u.",
        BookEntry.Moved => "On home: t, then u on it.",
        BookEntry.Entered => "On home: $, then u on it.",
        BookEntry.Payday => "On home: l, then z.",
        BookEntry.Reconciliation => "On home: @, then u.",
        BookEntry.Statement => "On home: %, then u.",
        BookEntry.Movement => "On home: l, then u on it.",
        _ => "",
    };

    /// <summary>The command by which an entry is taken back.</summary>
    public static string Command(BookEntry entry) => entry switch
    {
        BookEntry.Count count => $"payday count --undo \"{count.Pot}\"",
        BookEntry.Fill fill => $"payday fill --undo \"{fill.Pot}\"",
        BookEntry.Purchase purchase => $"payday spend --undo {purchase.Number}",
        BookEntry.Payment payment => $"payday due --undo {payment.Number}",
        BookEntry.Return => "payday return --undo",
        BookEntry.Moved move => $"payday move --undo {move.Number}",
        BookEntry.Entered entered => $"payday entry --undo {entered.Number}",
        BookEntry.Received => "payday fill --got slip",
        BookEntry.Difference => "payday undo --difference",
        BookEntry.Payday => "payday undo --payday",
        BookEntry.Reconciliation => "payday reconcile --undo",
        BookEntry.Statement => "payday statement --undo",
        BookEntry.Movement movement => $"payday undo --movement {movement.Number} --why TEXT",
        _ => "",
    };

    private static string Together(string sentence, string way) => way.Length == 0 ? sentence : $"{sentence} {way}";

    private static string Upper(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Cash(BookEntry what) => what is BookEntry.Count ? $"what {Name(what)} sent elsewhere" : Name(what);

    // Among a movement's owners a difference goes by the number of its count, as the ledger's list has it.
    private static string Owner(BookEntry entry) => entry is BookEntry.Difference difference ? $"the difference of count {difference.Number}" : Name(entry);

    /// <summary>What an entry is called in a sentence, e.g. <c>card purchase 3</c>.</summary>
    public static string Name(BookEntry entry) => entry switch
    {
        BookEntry.Count pot => $"the count of {pot.Pot} on {DateText.Day(pot.Date)}",
        BookEntry.Fill fill => $"the fill of {fill.Pot} for {DateText.Day(fill.Day)}",
        BookEntry.Purchase purchase => $"card purchase {purchase.Number}",
        BookEntry.Payment payment => $"the payment of {payment.Name} due {DateText.Day(payment.Due)}",
        BookEntry.Return back => $"the cash return of {DateText.Day(back.Date)}",
        BookEntry.Received received => $"the notes received for the payday of {DateText.Day(received.Date)}",
        BookEntry.Difference difference => $"the difference of {Name(difference.Counted)}",
        BookEntry.Payday payday => $"the payday of {DateText.Day(payday.Date)}",
        BookEntry.Moved move => $"move {move.Number}",
        BookEntry.Entered { IsCount: true } count => $"the count of the loose notes on {DateText.Day(count.Date)}",
        BookEntry.Entered entered => $"the {EntryKindText.Noun(entered.Kind)} of {DateText.Day(entered.Date)} (account entry {entered.Number})",
        BookEntry.Statement statement => $"the statement to {DateText.Day(statement.To)}",
        BookEntry.Reconciliation one => $"the reconciliation of {DateText.Day(one.Date)}",
        BookEntry.Movement movement => $"ledger line {movement.Number}",
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry, "There is no text for it."),
    };
}
