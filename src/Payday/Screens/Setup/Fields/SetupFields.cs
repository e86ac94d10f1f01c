using Payday.Core.Drafts;

namespace Payday.Screens.Setup.Fields;

/// <summary>Makes fields of forms.</summary>
internal static class SetupFields
{
    /// <summary>A field that holds a member of the part.</summary>
    public static MemberField<TPart, TValue> Of<TPart, TValue>(string label, DraftMember<TPart, TValue> member, FieldType<TValue> type, string help) =>
        Of(label, DraftPath.To(member), type, help);

    /// <summary>A field that holds a member of the part, or of a part of it.</summary>
    public static MemberField<TPart, TValue> Of<TPart, TValue>(string label, DraftPath<TPart, TValue> path, FieldType<TValue> type, string help) => new(path, type)
    {
        Label = label,
        Help = help,
        Place = path.Place,
        Applies = (part, _) => path.Belongs(part),
    };

    /// <summary>A field that holds a setting of the household.</summary>
    public static MemberField<HouseholdDraft, TValue> OfSetting<TValue>(string label, DraftMember<SettingsDraft, TValue> setting, FieldType<TValue> type, string help) =>
        Of(label, HouseholdDraft.Setting(DraftPath.To(setting)), type, help);

    /// <summary>A field that holds a member of a setting of the household.</summary>
    public static MemberField<HouseholdDraft, TValue> OfSetting<TOuter, TValue>(
        string label, DraftMember<SettingsDraft, TOuter?> setting, DraftMember<TOuter, TValue> inner, FieldType<TValue> type, string help)
        where TOuter : class, new() => Of(label, HouseholdDraft.Setting(DraftPath.To(setting, inner)), type, help);

    /// <summary>The field of an item's name.</summary>
    public static SetupField<TItem> Name<TItem>(string help)
        where TItem : ItemDraft => Of("Name", ItemMembers.Of<TItem>(ItemMembers.Name), new LineType(), help);
}
