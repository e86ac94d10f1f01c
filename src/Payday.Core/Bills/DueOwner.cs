using Payday.Core.Ids;

namespace Payday.Core.Bills;

/// <summary>Whose due it is: a bill's, or a debt's that asks for its minimum. One of the two.</summary>
/// <remarks>Ordered ordinally by the text of the id; of one text the bill first.</remarks>
public readonly record struct DueOwner : IComparable<DueOwner>
{
    private readonly string text;
    private readonly bool isDebt;

    private DueOwner(string text, bool isDebt) => (this.text, this.isDebt) = (text, isDebt);

    /// <summary>The bill; null where it is a debt's.</summary>
    public BillId? Bill => isDebt ? null : new(text);

    /// <summary>The debt; null where it is a bill's.</summary>
    public DebtId? Debt => isDebt ? new(text) : null;

    /// <summary>A bill's.</summary>
    public static DueOwner Of(BillId bill) => new(bill.Text, isDebt: false);

    /// <summary>A debt's.</summary>
    public static DueOwner Of(DebtId debt) => new(debt.Text, isDebt: true);

    /// <summary>By id, then bills first.</summary>
    public int CompareTo(DueOwner other)
    {
        int byText = string.CompareOrdinal(text, other.text);
        return byText != 0 ? byText : isDebt.CompareTo(other.isDebt);
    }

    /// <summary>Whether it comes before.</summary>
    public static bool operator <(DueOwner left, DueOwner right) => left.CompareTo(right) < 0;

    /// <summary>Whether it comes after.</summary>
    public static bool operator >(DueOwner left, DueOwner right) => left.CompareTo(right) > 0;

    /// <summary>Whether it comes before or is the same.</summary>
    public static bool operator <=(DueOwner left, DueOwner right) => left.CompareTo(right) <= 0;

    /// <summary>Whether it comes after or is the same.</summary>
    public static bool operator >=(DueOwner left, DueOwner right) => left.CompareTo(right) >= 0;
}
