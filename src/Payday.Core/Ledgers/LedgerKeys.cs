namespace Payday.Core.Ledgers;

/// <summary>The short texts by which stores and files name the ends of movements.</summary>
internal static class LedgerKeys
{
    private static readonly (PurposeKind Kind, string Word)[] Purposes =
    [
        (PurposeKind.LeftToPlace, "left-to-place"), (PurposeKind.Buffer, "buffer"), (PurposeKind.SetAside, "set-aside"),
        (PurposeKind.Pot, "pot"), (PurposeKind.KeptBack, "kept-back"), (PurposeKind.OwedBack, "owed-back"),
        (PurposeKind.Wallet, "wallet"), (PurposeKind.ForDebt, "for-debt"), (PurposeKind.Overdraft, "overdraft"),
        (PurposeKind.ForCard, "for-card"),
    ];

    private static readonly (OutsideKind Kind, string Word)[] Outsides =
    [
        (OutsideKind.Opening, "opening"), (OutsideKind.Source, "source"), (OutsideKind.Bill, "bill"),
        (OutsideKind.Interest, "interest"), (OutsideKind.Spending, "spending"), (OutsideKind.Difference, "difference"),
        (OutsideKind.Entry, "entry"),
    ];

    private static readonly (EntryKind Kind, string Word)[] EntryKinds =
    [
        (EntryKind.Refund, "refund"), (EntryKind.Interest, "interest"), (EntryKind.Gift, "gift"), (EntryKind.Transfer, "transfer"),
        (EntryKind.Fee, "fee"), (EntryKind.Payment, "payment"), (EntryKind.Income, "income"), (EntryKind.Borrowing, "borrowing"),
        (EntryKind.Loss, "loss"),
    ];

    /// <summary>The word of a kind of account entry.</summary>
    public static string Of(EntryKind kind) => Array.Find(EntryKinds, pair => pair.Kind == kind).Word;

    /// <summary>The kind of account entry that a word stands for; null for none.</summary>
    public static EntryKind? EntryKindOf(string word) => EntryKinds.FirstOrDefault(pair => pair.Word == word) is { Word: not null } known ? known.Kind : null;

    public static string Of(Place place, Purpose purpose) =>
        (place == Place.Account ? "account/" : "cash/") + Join(Array.Find(Purposes, pair => pair.Kind == purpose.Kind).Word, purpose.Text);

    public static string Of(OutsideKind kind, string id) =>
        "outside/" + Join(Array.Find(Outsides, pair => pair.Kind == kind).Word, id);

    public static LedgerEnd Read(string key)
    {
        int slash = key.IndexOf('/', StringComparison.Ordinal);
        string rest = key[(slash + 1)..];
        int colon = rest.IndexOf(':', StringComparison.Ordinal);
        string word = colon < 0 ? rest : rest[..colon];
        string id = colon < 0 ? "" : rest[(colon + 1)..];
        return (slash < 0 ? "" : key[..slash]) switch
        {
            "account" => new LedgerEnd.At(Place.Account, new Purpose(KindOf(Purposes, word, key), id)),
            "cash" => new LedgerEnd.At(Place.Cash, new Purpose(KindOf(Purposes, word, key), id)),
            "owed" => new LedgerEnd.Owed(new(rest)),
            "outside" => new LedgerEnd.Outside(KindOf(Outsides, word, key), id),
            _ => throw Unknown(key),
        };
    }

    private static string Join(string word, string id) => id.Length == 0 ? word : $"{word}:{id}";

    private static T KindOf<T>((T Kind, string Word)[] words, string word, string key)
    {
        int at = Array.FindIndex(words, pair => pair.Word == word);
        return at < 0 ? throw Unknown(key) : words[at].Kind;
    }

    private static FormatException Unknown(string key) => new($"'{key}' is not an end of a movement.");
}
