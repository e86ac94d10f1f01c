using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Cash;

namespace Payday.Store.Fields;

/// <summary>Writes the fields of a record into a document of the database; dates as ISO text.</summary>
internal sealed class DocumentWriter : IFieldWriter
{
    private DocumentWriter()
    {
    }

    private BsonDocument Document { get; } = [];

    /// <summary>The document that a record comes to.</summary>
    public static BsonDocument Of<T>(T record, Action<IFieldWriter, T> write)
    {
        var writer = new DocumentWriter();
        write(writer, record);
        return writer.Document;
    }

    public void Whole(string name, long value) => Document[name] = value;

    public void OptionalWhole(string name, long? value) => Document[name] = value is { } number ? number : BsonValue.Null;

    public void OptionalText(string name, string? value) => Document[name] = value is { } text ? text : BsonValue.Null;

    public void OptionalFlag(string name, bool? value) => Document[name] = value is { } flag ? flag : BsonValue.Null;

    public void OptionalDate(string name, LocalDate? value) => Document[name] = value is { } date ? LocalDatePattern.Iso.Format(date) : BsonValue.Null;

    public void OptionalNotes(string name, Notes? value)
    {
        if (value is null)
        {
            Document[name] = BsonValue.Null;
            return;
        }

        var notes = new BsonDocument();
        foreach ((long note, int count) in value)
        {
            notes[note.ToString(CultureInfo.InvariantCulture)] = count;
        }

        Document[name] = notes;
    }

    public void Texts(string name, IReadOnlyCollection<string> value) => Document[name] = new BsonArray(value.Select(text => new BsonValue(text)));

    public void OptionalList<T>(string name, IReadOnlyCollection<T>? items, Action<IFieldWriter, T> write) =>
        Document[name] = items is null ? BsonValue.Null : new BsonArray(items.Select(item => (BsonValue)Of(item, write)));

    public void OptionalPart<T>(string name, T? part, Action<IFieldWriter, T> write)
        where T : class => Document[name] = part is null ? BsonValue.Null : Of(part, write);

    public void Derived(string name, string value) => Document[name] = value;
}
