using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Json;

namespace Payday.Store.Formats;

/// <summary>A field of an object in a file: what it is called there, and how it is read and written.</summary>
/// <typeparam name="TPart">The part of a draft that the object is.</typeparam>
public abstract record FileField<TPart>
{
    /// <summary>What the file calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The field behind which it is written, where that isn't the one before it; empty for the first.</summary>
    public string? WrittenAfter { get; init; }

    /// <summary>What its value looks like.</summary>
    public abstract FileShape Shape { get; }

    /// <summary>The member it holds.</summary>
    internal abstract DraftMember Member { get; }

    /// <summary>That member, and those that have a field in it.</summary>
    internal abstract IEnumerable<DraftMember> AllMembers { get; }

    /// <summary>Its name, and those of the fields in it.</summary>
    internal abstract IEnumerable<string> AllNames { get; }

    /// <summary>Whether the part has it, going by its kind.</summary>
    internal abstract bool IsKnown(TPart part);

    /// <summary>The part with what stands there.</summary>
    internal abstract TPart Read(JsonCursor at, TPart part, FileReading reading);

    /// <summary>Writes name and value, if there is one.</summary>
    internal abstract void Write(Utf8JsonWriter json, TPart part, Currency currency);

    /// <summary>Whether there is something to write.</summary>
    internal abstract bool HasContent(TPart part);

    /// <summary>Where a place in it stands in the file.</summary>
    internal abstract FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading);
}

/// <summary>Makes fields.</summary>
public static class FileField
{
    /// <summary>A field that holds a member of a draft.</summary>
    public static FileField<TPart> Of<TPart, TValue>(DraftMember<TPart, TValue> member, string name, FileValue<TValue> type)
    {
        ArgumentNullException.ThrowIfNull(member);
        return new MemberField<TPart, TValue>(member, member.Of, member.Put, member.Belongs, type) { Name = name };
    }

    /// <summary>A field of an object that is asked for whatever the object's kind.</summary>
    public static FileField<TPart> Always<TPart, TValue>(DraftMember<TPart, TValue> member, string name, FileValue<TValue> type)
    {
        ArgumentNullException.ThrowIfNull(member);
        return new MemberField<TPart, TValue>(member, member.Of, member.Put, _ => true, type) { Name = name };
    }

    /// <summary>A field that all items have.</summary>
    public static FileField<TItem> OfItem<TItem>(DraftMember<ItemDraft, string?> member, string name)
        where TItem : ItemDraft
    {
        ArgumentNullException.ThrowIfNull(member);
        return new MemberField<TItem, string?>(member, member.Of, (item, value) => (TItem)member.Put(item, value), _ => true, FileValues.Line) { Name = name };
    }

    /// <summary>A setting, which stands beside the household's other fields.</summary>
    public static FileField<HouseholdDraft> OfSetting<TValue>(DraftMember<SettingsDraft, TValue> member, string name, FileValue<TValue> type)
    {
        DraftPath<HouseholdDraft, TValue> path = HouseholdDraft.Setting(DraftPath.To(member));
        return new MemberField<HouseholdDraft, TValue>(member, path.Get, path.Set, _ => true, type) { Name = name };
    }

    private sealed record MemberField<TPart, TValue>(
        DraftMember Is, Func<TPart, TValue> Get, Func<TPart, TValue, TPart> Set, Func<TPart, bool> Belongs, FileValue<TValue> Type) : FileField<TPart>
    {
        public override FileShape Shape => Type.Shape;

        internal override DraftMember Member => Is;

        internal override IEnumerable<DraftMember> AllMembers => Type.AllMembers.Prepend(Is);

        internal override IEnumerable<string> AllNames => Type.AllNames.Prepend(Name);

        internal override bool IsKnown(TPart part) => Belongs(part);

        internal override TPart Read(JsonCursor at, TPart part, FileReading reading) => Set(part, Type.Read(at, reading));

        internal override bool HasContent(TPart part) => Belongs(part) && Type.HasContent(Get(part));

        internal override void Write(Utf8JsonWriter json, TPart part, Currency currency)
        {
            if (HasContent(part))
            {
                json.WritePropertyName(Name);
                Type.Write(json, Get(part), currency);
            }
        }

        internal override FileSpot Find(FileSpot around, DraftStep item, ReadOnlySpan<DraftStep> rest, FileReading reading) =>
            Type.Find(around.In(JsonPlace.Field(around.Place, Name), Type.Wanted(reading)), item, rest, reading);
    }
}
