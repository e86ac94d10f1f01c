using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Store.Fields;

/// <summary>Gives the fields of a record, asked for in the order in which they were written.</summary>
/// <remarks>What is missing is damage: a <see cref="FormatException"/> or what else the form throws. An optional field may be missing.</remarks>
internal interface IFieldReader
{
    /// <summary>The currency of all amounts.</summary>
    Currency Currency { get; }

    /// <summary>A whole number.</summary>
    long Whole(string name);

    /// <summary>A whole number, or null.</summary>
    long? OptionalWhole(string name);

    /// <summary>A text, or null.</summary>
    string? OptionalText(string name);

    /// <summary>Yes, no, or null.</summary>
    bool? OptionalFlag(string name);

    /// <summary>A day, or null.</summary>
    LocalDate? OptionalDate(string name);

    /// <summary>An end of a movement; few ends have many movements, so the same one is the same object where that is cheap.</summary>
    LedgerEnd End(string name);

    /// <summary>How many there are of each note, or null.</summary>
    Notes? OptionalNotes(string name);

    /// <summary>Texts in order, or null.</summary>
    IReadOnlyList<string>? OptionalTexts(string name);

    /// <summary>Records within the record, or null.</summary>
    ImmutableArray<T>? OptionalList<T>(string name, Func<IFieldReader, T> read);

    /// <summary>A record within the record, or null.</summary>
    T? OptionalPart<T>(string name, Func<IFieldReader, T> read)
        where T : class;
}
