using LiteDB;
using Payday.Core.Households;
using Payday.Store.HouseholdFiles;

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
        var read = HouseholdFile.Read(JsonSerializer.Serialize(document["file"]));
        return read.Household ?? throw new FormatException(read.Faults[0].ToString());
    }
}
