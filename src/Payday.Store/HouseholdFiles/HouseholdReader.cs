using System.Text.Json;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Store.Formats;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>Reads the outermost object of a household file: into a draft, which the check makes a household of.</summary>
internal static class HouseholdReader
{
    /// <summary>The field of the version.</summary>
    public const string Version = "version";

    /// <summary>The field by which an editor finds the schema; it says nothing of the household.</summary>
    public const string Schema = "$schema";

    private static readonly CountValue VersionValue = new(1, int.MaxValue);

    /// <summary>Reads a household that a person gives.</summary>
    public static Household? Read(JsonCursor root) => Read(root, HouseholdCheck.Of);

    /// <summary>Reads a household that is stored, see <see cref="HouseholdCheck.OfStored"/>.</summary>
    public static Household? ReadStored(JsonCursor root) => Read(root, HouseholdCheck.OfStored);

    /// <summary>Reads a draft; null where it is of another version, or no object.</summary>
    public static HouseholdDraft? ReadDraft(JsonCursor root, FileReading reading)
    {
        JsonFields fields = root.Fields();
        fields.PassOver(Schema);
        return fields.AreThere && IsOfAVersionThatIsRead(fields, reading) ? HouseholdFormat.Fields.Read(fields, reading) : null;
    }

    private static Household? Read(JsonCursor root, Func<HouseholdDraft, Result<Household>> check)
    {
        var reading = new FileReading();
        if (ReadDraft(root, reading) is not { } draft)
        {
            return null;
        }

        Result<Household> checkedOne = check(draft);
        if (!checkedOne.Ok)
        {
            HouseholdFormat.Fields.Refuse(root, checkedOne.Faults.OfType<DraftFault>(), reading);
        }

        return checkedOne.Value;
    }

    private static bool IsOfAVersionThatIsRead(JsonFields fields, FileReading reading)
    {
        if (fields.Find(Version) is not { } field)
        {
            fields.Missing<int?>(Version, VersionValue.Wanted(reading));
            return true;
        }

        int? version = VersionValue.Read(field, reading);
        if (version < 1)
        {
            field.Refuse(new JsonTextFault.NotACount(field.Raw, 1, int.MaxValue));
        }
        else if (version > HouseholdFile.Version)
        {
            field.Refuse(new JsonTextFault.OtherVersion(version.Value, HouseholdFile.OldestVersion, HouseholdFile.Version));
            return false;
        }

        return true;
    }
}
