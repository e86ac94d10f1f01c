using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Cash;

namespace Payday.Store.Fields;

/// <summary>Takes the fields of a record one after another, whatever they are written to.</summary>
/// <remarks>
/// Each kind of record says its fields once, and so stands the same in a document of the database, in a line of the
/// journal and in a snapshot. A form without names keeps the order; a form with names keeps those.
/// </remarks>
internal interface IFieldWriter
{
    /// <summary>A whole number.</summary>
    void Whole(string name, long value);

    /// <summary>A whole number, or none.</summary>
    void OptionalWhole(string name, long? value);

    /// <summary>A text, or none.</summary>
    void OptionalText(string name, string? value);

    /// <summary>Yes, no, or neither.</summary>
    void OptionalFlag(string name, bool? value);

    /// <summary>A day, or none.</summary>
    void OptionalDate(string name, LocalDate? value);

    /// <summary>How many there are of each note, by its value.</summary>
    void OptionalNotes(string name, Notes? value);

    /// <summary>Texts in order.</summary>
    void Texts(string name, IReadOnlyCollection<string> value);

    /// <summary>Records within the record, or none.</summary>
    void OptionalList<T>(string name, IReadOnlyCollection<T>? items, Action<IFieldWriter, T> write);

    /// <summary>A record within the record, or none.</summary>
    void OptionalPart<T>(string name, T? part, Action<IFieldWriter, T> write)
        where T : class;

    /// <summary>What follows from the other fields, and is written only where a document needs it.</summary>
    void Derived(string name, string value);
}
