namespace Payday.Json;

/// <summary>The answer of <c>fill</c>.</summary>
internal sealed record FillsResult(IReadOnlyList<FillResult> Fills);

/// <summary>A fill of the wallet.</summary>
internal sealed record FillResult(string Pot, string Day, string Amount, IReadOnlyDictionary<string, int> Notes, string State);

/// <summary>The answer of <c>fill --got</c>: what was asked for and given, and where it goes.</summary>
internal sealed record ReceivedResult(
    string Payday,
    IReadOnlyDictionary<string, int> Asked,
    IReadOnlyDictionary<string, int> Given,
    string More,
    IReadOnlyList<FillingResult> Filling,
    IReadOnlyDictionary<string, int> Loose,
    IReadOnlyDictionary<string, string> LooseOf,
    IReadOnlyDictionary<string, string> BackInAccount,
    string FromBuffer,
    IReadOnlyList<string> Says);

/// <summary>The answer of <c>count</c>.</summary>
internal sealed record CountResult(string Date, string Week, IReadOnlyList<CountedResult> Pots);

/// <summary>A pot of <see cref="CountResult"/>; what is left is null where it was not counted.</summary>
internal sealed record CountedResult(
    string Pot, string Filled, string OwedBack, string Expected, string? Left, string? Spent, string Difference, string Then);

/// <summary>The answer of <c>spend</c>.</summary>
internal sealed record SpendResult(bool Stored, IReadOnlyList<SpentResult> Purchases);

/// <summary>
/// A card purchase; the number is null while it is not stored. One over several pots has an entry a part, each with the number of
/// the first as its whole; the card is the debt whose card paid, null for the account.
/// </summary>
internal sealed record SpentResult(long? Number, string Date, string Pot, string Amount, string? OwedBack, string What, long? Whole, string? Card);

/// <summary>The answer of <c>due</c>: what is still to be paid, and what was paid; all of late where nothing was entered.</summary>
internal sealed record DuesResult(bool Stored, IReadOnlyList<OpenDueResult> Dues, IReadOnlyList<PaidDueResult> Paid, IReadOnlyList<ExtraPaymentResult> ToPayYourself);

/// <summary>What the last payday put on a debt above its minimum and the bank hasn't shown yet, in <see cref="DuesResult"/>; since is that payday, paid that the person said so.</summary>
internal sealed record ExtraPaymentResult(string Debt, string Name, string Amount, string Since, bool Paid);

/// <summary>A due that is to be paid; the kind is <c>bill</c> or <c>minimum</c>.</summary>
internal sealed record OpenDueResult(string Kind, string Name, string Due, string ToPay, string Paid, string Has);

/// <summary>What was paid of a due; the number is null where a payday wrote it.</summary>
internal sealed record PaidDueResult(long? Number, string Kind, string Name, string Due, string On, string Amount, bool Freed);

/// <summary>The answer of <c>return</c>.</summary>
internal sealed record ReturnResult(bool Stored, IReadOnlyList<ReturnPotResult> Pots, IReadOnlyDictionary<string, int> Slip, string Unlisted, string Total);

/// <summary>A pot of <see cref="ReturnResult"/>; the notes are null where they are not known.</summary>
internal sealed record ReturnPotResult(string Pot, string Owes, IReadOnlyDictionary<string, int>? Notes, string? Swap, bool Goes, string? Advice);

/// <summary>The answer of <c>move</c>; the number is null while it is not stored, the notes where they aren't known or none change hands.</summary>
internal sealed record MoveResult(
    bool Stored, long? Number, string Date, string From, string To, string Amount, string Way, string FromAfter, string ToAfter, IReadOnlyDictionary<string, int>? Notes, string Why);

/// <summary>The answer of <c>entry</c>; the cheque and the notes are null where there are none.</summary>
internal sealed record EntryResult(
    long Number, string Date, string Kind, string For, string Amount, string What, long? Cheque, IReadOnlyDictionary<string, int>? Notes);

/// <summary>The answer of <c>--undo</c> of <c>count</c>, <c>fill</c> and <c>return</c>.</summary>
internal sealed record TakenBackResult(IReadOnlyList<TakenBack> TakenBack);

/// <summary>Something taken back: a count, fill or cash return; the pot is null for the last.</summary>
internal sealed record TakenBack(string What, string? Pot, string Date);

/// <summary>The answer of <c>reconcile</c>; balance and difference are null while the bank's balance isn't given.</summary>
internal sealed record ReconcileResult(
    bool Stored, string Date, string? Balance, string Here, string OnItsWay, string Expected, string? Difference, string? Name, IReadOnlyList<AccountLineResult> Lines, IReadOnlyList<string> LookAt);

/// <summary>An account line of <see cref="ReconcileResult"/>.</summary>
internal sealed record AccountLineResult(long Number, string Date, string What, string Amount, long? Cheque, bool AtBank);

/// <summary>The answer of <c>status</c>.</summary>
internal sealed record StatusResult(
    bool Waiting, string? NextPayday, bool PaydayDue, string? CountOpenSince, int FillsWaiting, string OwedBack, int OpenDifferences, BankResult? Bank,
    IReadOnlyList<PaymentToMakeResult> ToPayYourself, OnTheWayResult? OnTheWay);

/// <summary>What the last payday put on a debt above its minimum and the bank hasn't shown yet, in <see cref="StatusResult"/>; since is that payday.</summary>
internal sealed record PaymentToMakeResult(string Debt, string Name, string Amount, string Since);

/// <summary>What the account here has and the bank doesn't show yet, in <see cref="StatusResult"/>: what comes in less what goes out, and what the bank should show.</summary>
internal sealed record OnTheWayResult(string Amount, string BankShows);

/// <summary>When the account was last held against the bank, and what came of it, in <see cref="StatusResult"/>; the difference is above zero where the bank had more.</summary>
internal sealed record BankResult(string Date, string Difference, string? Name, bool Explained);
