using LiteDB;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Store.Edits;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Books;

public sealed class BookSchemaTests
{
    [Fact]
    public void Load_StoreOfVersion1_GivesAllThatIsInIt()
    {
        using var scratch = new ScratchFolder();
        StoreOfVersion1.CopyTo(scratch.Data);
        using BookStore store = BookStore.Open(scratch.Data);

        Book book = store.Load()!;

        Assert.Equal("Reed house", book.Household.Name);
        Assert.Equal(["Rent", "Card", "Food", "Roof"], [.. book.Household.Bills.Select(bill => bill.Name), .. book.Household.Debts.Select(debt => debt.Name), .. book.Household.Pots.Select(pot => pot.Name)]);
        Assert.Equal(8, book.Ledger.Movements.Count);
        Assert.Equal(Samples.Income(3) with { Number = 8 }, book.Ledger.Movements[^1]);
        Assert.Equal(Structure.Of(StoreOfVersion1.Closed), Structure.Of(Assert.Single(book.Closed)));
        Assert.Equal(Structure.Of(StoreOfVersion1.Draft), Structure.Of(book.Draft));
        Assert.True(book.Weeks.IsEmpty);
    }

    [Fact]
    public void Open_StoreOfVersion1_CarriesItForward()
    {
        using var scratch = new ScratchFolder();
        StoreOfVersion1.CopyTo(scratch.Data);
        string before;
        using (BookStore store = BookStore.Open(scratch.Data))
        {
            before = Samples.Text(store.Load());
        }

        RawDatabase.Edit(scratch.Data, database => Assert.Equal(
            StoreVersion.Current, database.GetCollection("meta").FindById("schema")["version"].AsInt32));
        using BookStore again = BookStore.Open(scratch.Data);
        Assert.Equal(before, Samples.Text(again.Load()));

        // And goes on from there.
        Book book = again.Load()!;
        Book spent = Purchasing.Enter(book, new PurchaseEntry(Samples.Payday.PlusDays(2), null, Samples.Cents(1), "stamp")).Value!;
        again.Save(book, spent);
        Assert.Equal(Samples.Text(spent), Samples.Text(again.Load()));
    }

    [Fact]
    public void Open_NewerVersion_IsRefusedAndLeftAlone()
    {
        using var scratch = new ScratchFolder();
        Samples.Begun(scratch.Data).Dispose();
        RawDatabase.Edit(scratch.Data, database => database.GetCollection("meta").Update(
            new BsonDocument { ["_id"] = "schema", ["version"] = StoreVersion.Current + 1 }));
        byte[] before = File.ReadAllBytes(scratch.Data.Database);

        var fault = Assert.Throws<StoreException>(() => BookStore.Open(scratch.Data));

        Assert.Equal($"{scratch.Data.Path} was written by a newer Payday. Nothing was changed; use that version, or another folder with --data.", fault.Said());
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

        Assert.Equal($"{scratch.Data.Database} was not written by Payday. Nothing was changed; move it elsewhere, or choose another folder with --data.", fault.Said());
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
