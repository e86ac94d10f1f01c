using LiteDB;
using Payday.Core.Households;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Documents;

/// <summary>The household as it is stored: the household file as a document, so that there is one mapping of it.</summary>
internal static class HouseholdDocument
{
    public static BsonDocument From(Household household, string id) => new()
    {
        ["_id"] = id,
        ["file"] = JsonSerializer.Deserialize(HouseholdFile.Write(household)),
    };

    public static Household To(BsonDocument document)
    {
        JsonReading<Household> read = HouseholdFile.Read(JsonSerializer.Serialize(document["file"]));
        return read.Value ?? throw new FormatException(read.Faults[0].ToString());
    }
}
