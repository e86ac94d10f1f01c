using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>Makes lists of records.</summary>
public static class RecordList
{
    /// <summary>Some records, numbered from 1.</summary>
    public static RecordList<T, TTraits> Of<T, TTraits>(params ReadOnlySpan<T> records)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum => new RecordList<T, TTraits>([], []).Add(records);

    /// <summary>Records whose traits are known, so that none is looked at.</summary>
    /// <param name="all">The records.</param>
    /// <param name="traits">The traits of each.</param>
    /// <exception cref="ArgumentException">There are more or fewer traits than records.</exception>
    public static RecordList<T, TTraits> Known<T, TTraits>(GrowingList<T> all, IReadOnlyList<TTraits> traits)
        where T : class, IRecord<TTraits>
        where TTraits : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(all);
        ArgumentNullException.ThrowIfNull(traits);
        return traits.Count == all.Count
            ? new RecordList<T, TTraits>(all, GrowingList.After(traits))
            : throw new ArgumentException($"{all.Count} records have {traits.Count} traits.", nameof(traits));
    }
}
