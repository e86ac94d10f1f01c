using Payday.Core.Ledgers;

namespace Payday.Texts;

/// <summary>The kinds of account entries in words.</summary>
internal static class EntryKindText
{
    /// <summary>As one thing, e.g. <c>the loss of 6 Mar</c>.</summary>
    public static string Noun(EntryKind kind) => kind switch
    {
        EntryKind.Borrowing => "borrowing",
        EntryKind.Loss => "loss",
        _ => Of(kind),
    };

    /// <summary>E.g. <c>fee</c>.</summary>
    public static string Of(EntryKind kind) => kind switch
    {
        EntryKind.Refund => "refund",
        EntryKind.Interest => "interest",
        EntryKind.Gift => "gift",
        EntryKind.Transfer => "transfer",
        EntryKind.Fee => "fee",
        EntryKind.Payment => "payment",
        EntryKind.Income => "income",
        EntryKind.Borrowing => "borrowed",
        EntryKind.Loss => "lost",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
