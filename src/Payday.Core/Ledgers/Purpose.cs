using Payday.Core.Ids;

namespace Payday.Core.Ledgers;

/// <summary>What money in a place is for: a bill, a pot, the buffer, or nothing yet.</summary>
public readonly record struct Purpose
{
    internal Purpose(PurposeKind kind, string text) => (Kind, Text) = (kind, text);

    /// <summary>The sort of purpose.</summary>
    public PurposeKind Kind { get; }

    /// <summary>The bill it is for; null where it is for none.</summary>
    public BillId? BillId => Kind == PurposeKind.SetAside ? new(Text) : null;

    /// <summary>The debt it is for; null where it is for none.</summary>
    public DebtId? DebtId => Kind is PurposeKind.ForDebt or PurposeKind.ForCard ? new(Text) : null;

    /// <summary>The pot it is for; null where it is for none.</summary>
    public PotId? PotId => Kind is PurposeKind.Pot or PurposeKind.KeptBack or PurposeKind.OwedBack or PurposeKind.Wallet ? new(Text) : null;

    // Of the id; empty where there is none.
    internal string Text { get; }

    /// <summary>Deliberately without another purpose.</summary>
    public static Purpose Buffer { get; } = new(PurposeKind.Buffer, "");

    /// <summary>Still waiting for a purpose; nothing at all once a payday is closed.</summary>
    public static Purpose LeftToPlace { get; } = new(PurposeKind.LeftToPlace, "");

    /// <summary>Held for a bill's next due dates.</summary>
    public static Purpose SetAside(BillId bill) => new(PurposeKind.SetAside, bill.Text);

    /// <summary>Held for a debt's next payments: minimums covered that have not left the account yet.</summary>
    public static Purpose ForDebt(DebtId debt) => new(PurposeKind.ForDebt, debt.Text);

    /// <summary>Held for what was bought with a card that is a debt, until it is paid on that: beside its minimums, which so stay whole.</summary>
    public static Purpose ForCard(DebtId debt) => new(PurposeKind.ForCard, debt.Text);

    /// <summary>What the account has less than nothing; below zero. What comes in pays it off first.</summary>
    public static Purpose Overdraft { get; } = new(PurposeKind.Overdraft, "");

    /// <summary>In a pot.</summary>
    public static Purpose Pot(PotId pot) => new(PurposeKind.Pot, pot.Text);

    /// <summary>For a cash pot, but no available note could make it; joins its next fill.</summary>
    public static Purpose KeptBack(PotId pot) => new(PurposeKind.KeptBack, pot.Text);

    /// <summary>In the wallet, to be spent from a pot; what is not in the wallet yet is in the pot itself, at home.</summary>
    public static Purpose Wallet(PotId pot) => new(PurposeKind.Wallet, pot.Text);

    /// <summary>Cash that a pot owes the account after a card purchase; in the account, what its card purchases are still short of.</summary>
    public static Purpose OwedBack(PotId pot) => new(PurposeKind.OwedBack, pot.Text);
}

/// <summary>The sorts of purpose.</summary>
public enum PurposeKind
{
    /// <summary>Waiting for a purpose.</summary>
    LeftToPlace,

    /// <summary>Deliberately without another purpose.</summary>
    Buffer,

    /// <summary>For a bill.</summary>
    SetAside,

    /// <summary>For a pot.</summary>
    Pot,

    /// <summary>For a pot's next fill.</summary>
    KeptBack,

    /// <summary>Owed to the account.</summary>
    OwedBack,

    /// <summary>In the wallet.</summary>
    Wallet,

    /// <summary>For a debt's next payments.</summary>
    ForDebt,

    /// <summary>Less than nothing in the account.</summary>
    Overdraft,

    /// <summary>For what was bought with a card that is a debt.</summary>
    ForCard,
}
