using System.Collections.Immutable;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>How a part of a draft stands in a file as an object: its fields, each said once for reading and for writing.</summary>
/// <typeparam name="TPart">The part.</typeparam>
public sealed class PartFormat<TPart>
    where TPart : class, new()
{
    private readonly ImmutableArray<FileField<TPart>> fields;
    private readonly ImmutableArray<FileField<TPart>> written;

    /// <param name="fields">The fields, in the order in which a fault lists them; a field that others depend on comes before these.</param>
    public PartFormat(params ImmutableArray<FileField<TPart>> fields)
    {
        this.fields = fields;
        var order = fields.Where(field => field.WrittenAfter is null).ToList();
        foreach (FileField<TPart> field in fields.Where(field => field.WrittenAfter is not null))
        {
            order.Insert(order.FindIndex(other => other.Name == field.WrittenAfter) + 1, field);
        }

        written = [.. order];
    }

    /// <summary>The part as it is before its fields are read, where that depends on which there are.</summary>
    public Func<JsonFields, TPart> Begin { get; init; } = _ => new();

    /// <summary>Whether all fields of a part are known; of an unknown kind nothing is known about the other fields either.</summary>
    public Func<TPart, bool> IsKnown { get; init; } = _ => true;

    /// <summary>What it looks like, its fields in the order in which they are written.</summary>
    public FileShape Shape => new FileShape.Object([.. written.Select(one => (one.Name, one.Shape))]);

    /// <summary>The members that have a field, also those of what is in it.</summary>
    internal IEnumerable<DraftMember> AllMembers => fields.SelectMany(one => one.AllMembers);

    /// <summary>What the file calls them, also those of what is in them.</summary>
    internal IEnumerable<string> AllNames => fields.SelectMany(one => one.AllNames);

    /// <summary>Reads a part; what of it can't be read is reported and missing in it.</summary>
    public TPart Read(JsonCursor at, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        return Read(at.Fields(), reading);
    }

    /// <summary>Reads a part of an object, of which some fields may have been read before.</summary>
    public TPart Read(JsonFields there, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(there);
        ArgumentNullException.ThrowIfNull(reading);
        TPart part = Begin(there);
        foreach (FileField<TPart> field in fields)
        {
            if (field.IsKnown(part) && there.Find(field.Name) is { } value)
            {
                part = field.Read(value, part, reading);
            }
        }

        if (!reading.IsLenient && IsKnown(part))
        {
            there.RefuseOthers();
        }

        return part;
    }

    /// <summary>Writes the fields of a part.</summary>
    public void WriteFields(Utf8JsonWriter json, TPart part, Currency currency)
    {
        foreach (FileField<TPart> field in written)
        {
            field.Write(json, part, currency);
        }
    }

    /// <summary>Reports what a check found in a part that was read.</summary>
    /// <param name="at">Where the part stands, the outermost object of the file.</param>
    /// <param name="faults">What was found.</param>
    /// <param name="reading">The reading.</param>
    public void Refuse(JsonCursor at, IEnumerable<DraftFault> faults, FileReading reading)
    {
        ArgumentNullException.ThrowIfNull(at);
        ArgumentNullException.ThrowIfNull(faults);
        foreach (DraftFault fault in faults)
        {
            FileSpot spot = Find(FileSpot.Whole, fault.Place.Steps.AsSpan(), reading);
            at.RefuseChecked(spot.Places, fault switch
            {
                DraftFault.Missing => new JsonTextFault.Missing(spot.Wanted),
                DraftFault.NameTaken taken => new JsonTextFault.NameTaken(taken.Name, Find(FileSpot.Whole, taken.Other.Steps.AsSpan(), reading).Place),
                _ => fault,
            });
        }
    }

    internal bool HasContent(TPart part) => fields.Any(field => field.HasContent(part));

    internal FileSpot Find(FileSpot around, ReadOnlySpan<DraftStep> steps, FileReading reading)
    {
        if (steps.IsEmpty)
        {
            return around;
        }

        DraftMember member = steps[0].Member;
        return fields.First(field => field.Member == member).Find(around, steps[0], steps[1..], reading);
    }
}
