using LiteDB;
using Payday.Store.Contents;
using Payday.Store.Edits;

namespace Payday.Store.Databases;

/// <summary>Reads a database whole.</summary>
internal static class DatabaseContent
{
    /// <summary>All its documents.</summary>
    /// <param name="collection">Its collections by their names.</param>
    /// <exception cref="Exception">Anything: a damaged one trips in any way there is.</exception>
    public static BookContent Of(Func<string, ILiteCollection<BsonDocument>> collection)
    {
        var content = new BookContent();
        foreach (string name in CollectionNames.All)
        {
            foreach (BsonDocument document in collection(name).FindAll())
            {
                content.Add(name, document);
            }
        }

        return content;
    }
}
