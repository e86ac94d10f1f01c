using LiteDB;

namespace Payday.Store.Tests.Books;

public sealed class BookSchemaTests
{
    [Fact]
    public void Open_NewerVersion_IsRefusedAndLeftAlone()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        RawDatabase.Edit(scratch.Data, database => database.GetCollection("meta").Update(
            new BsonDocument { ["_id"] = "schema", ["version"] = BookStore.SchemaVersion + 1 }));
        byte[] before = File.ReadAllBytes(scratch.Data.Database);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data));

        Assert.Equal($"{scratch.Data.Path} was written by a newer Payday. Use that version, or another folder with --data.", fault.Message);
        Assert.Equal(before, File.ReadAllBytes(scratch.Data.Database));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{ "version": "1" }""")]
    [InlineData("""{ "version": 0 }""")]
    public void Open_DatabaseOfAnotherProgram_IsRefusedAndLeftAlone(string schema)
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Data.Path);
        RawDatabase.Edit(scratch.Data, database =>
        {
            BsonDocument document = JsonSerializer.Deserialize(schema).AsDocument;
            document["_id"] = document.Count == 0 ? "other" : "schema";
            database.GetCollection("meta").Insert(document);
        });
        byte[] before = File.ReadAllBytes(scratch.Data.Database);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data));

        Assert.Equal($"{scratch.Data.Database} was not written by Payday. Nothing was changed; move it elsewhere, or choose another folder with --data.", fault.Message);
        Assert.Equal(before, File.ReadAllBytes(scratch.Data.Database));
    }

    [Fact]
    public void Open_EmptyDatabaseOfTheRightName_IsRefused()
    {
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Data.Path);
        RawDatabase.Edit(scratch.Data, _ => { });

        Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data));
    }
}
