using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>Makes lists of records.</summary>
public static class RecordList
{
    /// <summary>Some records, numbered from 1.</summary>
    public static RecordList<T, TTraits> Of<T, TTraits>(params ReadOnlySpan<T> records)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum => new RecordList<T, TTraits>([], []).Add(records);

    /// <summary>The mark of a record.</summary>
    public static RecordMark<TTraits> MarkOf<TTraits>(IRecord<TTraits> record)
        where TTraits : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(record);
        return RecordMark<TTraits>.Of(record);
    }

    /// <summary>Records whose marks are known, so that none is looked at.</summary>
    /// <param name="all">The records.</param>
    /// <param name="marks">The mark of each.</param>
    /// <exception cref="ArgumentException">There are more or fewer marks than records.</exception>
    public static RecordList<T, TTraits> Known<T, TTraits>(GrowingList<T> all, IReadOnlyList<RecordMark<TTraits>> marks)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentNullException.ThrowIfNull(marks);
        return marks.Count == all.Count
            ? new RecordList<T, TTraits>(all, GrowingList.After(marks))
            : throw new ArgumentException($"{all.Count} records have {marks.Count} marks.", nameof(marks));
    }
}
