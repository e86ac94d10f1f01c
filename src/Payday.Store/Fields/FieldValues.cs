using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;

namespace Payday.Store.Fields;

/// <summary>Values that are written as simpler ones: an amount as whole minor units, a choice as its name.</summary>
internal static class FieldValues
{
    public static void Text(this IFieldWriter to, string name, string value) => to.OptionalText(name, value);

    public static string Text(this IFieldReader from, string name) => from.OptionalText(name) ?? throw Missing(name);

    public static void Flag(this IFieldWriter to, string name, bool value) => to.OptionalFlag(name, value);

    public static bool Flag(this IFieldReader from, string name) => from.OptionalFlag(name) ?? throw Missing(name);

    public static void Date(this IFieldWriter to, string name, LocalDate value) => to.OptionalDate(name, value);

    public static LocalDate Date(this IFieldReader from, string name) => from.OptionalDate(name) ?? throw Missing(name);

    public static void Amount(this IFieldWriter to, string name, Money value) => to.Whole(name, value.MinorUnits);

    public static Money Amount(this IFieldReader from, string name) => Money.FromMinorUnits(from.Whole(name), from.Currency);

    public static void OptionalAmount(this IFieldWriter to, string name, Money? value) => to.OptionalWhole(name, value?.MinorUnits);

    public static Money? OptionalAmount(this IFieldReader from, string name) =>
        from.OptionalWhole(name) is { } minorUnits ? Money.FromMinorUnits(minorUnits, from.Currency) : null;

    public static void Choice<T>(this IFieldWriter to, string name, StoredWords<T> words, T value)
        where T : struct, Enum => to.OptionalText(name, words.WordFor(value));

    public static T Choice<T>(this IFieldReader from, string name, StoredWords<T> words)
        where T : struct, Enum => words.ValueOf(from.Text(name));

    public static void OptionalChoice<T>(this IFieldWriter to, string name, StoredWords<T> words, T? value)
        where T : struct, Enum => to.OptionalText(name, value is { } chosen ? words.WordFor(chosen) : null);

    public static T? OptionalChoice<T>(this IFieldReader from, string name, StoredWords<T> words)
        where T : struct, Enum => from.OptionalText(name) is { } text ? words.ValueOf(text) : null;

    public static void Notes(this IFieldWriter to, string name, Notes value) => to.OptionalNotes(name, value);

    public static Notes Notes(this IFieldReader from, string name) => from.OptionalNotes(name) ?? throw Missing(name);

    public static void List<T>(this IFieldWriter to, string name, IReadOnlyCollection<T> items, Action<IFieldWriter, T> write) =>
        to.OptionalList(name, items, write);

    public static ImmutableArray<T> List<T>(this IFieldReader from, string name, Func<IFieldReader, T> read) => from.OptionalList(name, read) ?? throw Missing(name);

    // A list, not a document: the fields of a BSON document don't differ by case alone, and names that people give may.
    public static void Amounts<TId>(this IFieldWriter to, string name, ImmutableSortedDictionary<TId, Money> value, Func<TId, string> text)
        where TId : notnull => to.OptionalList(name, value, (item, pair) =>
        {
            item.Text("id", text(pair.Key));
            item.Amount("amount", pair.Value);
        });

    public static ImmutableSortedDictionary<TId, Money> Amounts<TId>(this IFieldReader from, string name, Func<string, TId> id, IComparer<TId>? order = null)
        where TId : notnull =>
        from.List(name, item => KeyValuePair.Create(id(item.Text("id")), item.Amount("amount"))).Sorted(order);

    /// <summary>By their keys; most records have none, and share that.</summary>
    public static ImmutableSortedDictionary<TKey, TValue> Sorted<TKey, TValue>(this ImmutableArray<KeyValuePair<TKey, TValue>> pairs, IComparer<TKey>? order = null)
        where TKey : notnull
    {
        ImmutableSortedDictionary<TKey, TValue> none = order is null ? ImmutableSortedDictionary<TKey, TValue>.Empty : ImmutableSortedDictionary<TKey, TValue>.Empty.WithComparers(order);
        return pairs.IsEmpty ? none : none.AddRange(pairs);
    }

    private static FormatException Missing(string name) => new($"The field '{name}' is missing.");
}
