namespace Payday.Core.Ids;

/// <summary>The stable name of a bill: what the ledger, the records and the household's file know it by, whatever it is called.</summary>
/// <param name="Text">As stored, the case counting; never shown but where a file or a command names it.</param>
/// <remarks>Ordered by the code units of its text. The default names nothing.</remarks>
public readonly record struct BillId(string Text) : IComparable<BillId>
{
    /// <summary>By text, ordinally.</summary>
    public int CompareTo(BillId other) => string.CompareOrdinal(Text, other.Text);

    /// <summary>The text.</summary>
    public override string ToString() => Text;

    /// <summary>Whether it comes before.</summary>
    public static bool operator <(BillId left, BillId right) => left.CompareTo(right) < 0;

    /// <summary>Whether it comes after.</summary>
    public static bool operator >(BillId left, BillId right) => left.CompareTo(right) > 0;

    /// <summary>Whether it comes before or is the same.</summary>
    public static bool operator <=(BillId left, BillId right) => left.CompareTo(right) <= 0;

    /// <summary>Whether it comes after or is the same.</summary>
    public static bool operator >=(BillId left, BillId right) => left.CompareTo(right) >= 0;
}
