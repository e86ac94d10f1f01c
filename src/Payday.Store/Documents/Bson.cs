using LiteDB;
using NodaTime;
using NodaTime.Text;

namespace Payday.Store.Documents;

/// <summary>How single values stand in documents.</summary>
internal static class Bson
{
    /// <summary>A day as ISO text.</summary>
    public static BsonValue Of(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
