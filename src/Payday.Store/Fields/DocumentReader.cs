using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Store.Fields;

/// <summary>Reads the fields of a record from a document of the database.</summary>
/// <param name="document">The document.</param>
/// <param name="currency">The currency of its amounts.</param>
internal sealed class DocumentReader(BsonDocument document, Currency currency) : IFieldReader
{
    public Currency Currency => currency;

    public long Whole(string name) => document[name].AsInt64;

    public long? OptionalWhole(string name) => document[name] is { IsNull: false } value ? value.AsInt64 : null;

    public string? OptionalText(string name) => document[name] is { IsNull: false } value ? value.AsString : null;

    public bool? OptionalFlag(string name) => document[name] is { IsNull: false } value ? value.AsBoolean : null;

    public LocalDate? OptionalDate(string name) =>
        document[name] is { IsNull: false } value ? LocalDatePattern.Iso.Parse(value.AsString).GetValueOrThrow() : null;

    public LedgerEnd End(string name) => LedgerEnd.FromKey(document[name].AsString);

    public Notes? OptionalNotes(string name) => document[name] is { IsNull: false } value
        ? Notes.Of(value.AsDocument.Select(pair => (long.Parse(pair.Key, CultureInfo.InvariantCulture), pair.Value.AsInt32)))
        : null;

    public IReadOnlyList<string>? OptionalTexts(string name) =>
        document[name] is { IsNull: false } value ? [.. value.AsArray.Select(text => text.AsString)] : null;

    public ImmutableArray<T>? OptionalList<T>(string name, Func<IFieldReader, T> read) => document[name] is { IsNull: false } value
        ? [.. value.AsArray.Select(item => read(new DocumentReader(item.AsDocument, currency)))]
        : null;

    public T? OptionalPart<T>(string name, Func<IFieldReader, T> read)
        where T : class => document[name] is { IsNull: false } value ? read(new DocumentReader(value.AsDocument, currency)) : null;
}
