using LiteDB;
using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Documents;

/// <summary>The household as it is stored: the text of its household file, so that there is one mapping of it.</summary>
internal static class HouseholdDocument
{
    /// <summary>The id of the one household.</summary>
    public const string Id = "household";

    /// <exception cref="ArgumentException">The household is one that <see cref="To(string)"/> would not take again.</exception>
    public static BsonDocument From(Household household)
    {
        string file = HouseholdFile.Write(household);
        JsonReading<Household> read = HouseholdFile.ReadStored(file);
        return read.Ok
            ? new BsonDocument { ["_id"] = Id, ["file"] = file }
            : throw new ArgumentException(read.Faults[0].ToString(), nameof(household));
    }

    public static Household To(BsonDocument document) => To(document["file"].AsString);

    /// <summary>The household of a file's text.</summary>
    public static Household To(string file)
    {
        JsonReading<Household> read = HouseholdFile.ReadStored(file);
        return read.Value ?? throw new FormatException(read.Faults[0].ToString());
    }
}
