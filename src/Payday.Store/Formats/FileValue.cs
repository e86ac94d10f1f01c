using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>How a value of a draft stands in a file.</summary>
/// <typeparam name="T">The value; null where there is none.</typeparam>
public abstract class FileValue<T>
{
    /// <summary>What belongs in its place.</summary>
    public abstract JsonWanted Wanted(FileReading reading);

    /// <summary>What it looks like.</summary>
    public abstract FileShape Shape { get; }

    /// <summary>Reads it; where it can't be read that is reported, and it is null or something that no check takes.</summary>
    public abstract T Read(JsonCursor at, FileReading reading);

    /// <summary>Writes it.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="value">The value, which is there.</param>
    /// <param name="currency">The currency of every amount.</param>
    public abstract void Write(Utf8JsonWriter json, T value, Currency currency);

    /// <summary>Whether there is anything to write of it.</summary>
    public virtual bool HasContent(T value) => value is not null;

    /// <summary>The members that have a field in it.</summary>
    internal virtual IEnumerable<DraftMember> AllMembers => [];

    /// <summary>The names of the fields in it.</summary>
    internal virtual IEnumerable<string> AllNames => [];

    /// <summary>Where a place inside it stands in the file.</summary>
    /// <param name="around">Where the value stands.</param>
    /// <param name="item">Which item of it is meant, or null.</param>
    /// <param name="rest">The steps from there on.</param>
    /// <param name="reading">The reading.</param>
    internal virtual FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) =>
        item.Item is { } index ? around.In(JsonPlace.Item(around.Place, index), Wanted(reading)) : around;
}
