using CsCheck;
using Payday.Core.Cash;
using Payday.Store.Documents;
using Payday.Store.Fields;
using Payday.Store.Tests.Books;
using Payday.Store.Tests.HouseholdFiles;

namespace Payday.Store.Tests.Snapshots;

/// <summary>Every record comes back from its packed form as it went in, one behind the other.</summary>
public sealed class PackedRoundTripTests
{
    [Fact]
    public void Movements_PackedAndBack_AreTheSame() => GenBook.Movement.Array[0, 20].Sample(records => Same(MovementDocument.Form, records), iter: 300);

    [Fact]
    public void Closed_PackedAndBack_AreTheSame() => GenBook.Closed.Array[0, 5].Sample(records => Same(ClosedDocument.Form, records), iter: 100);

    [Fact]
    public void Drafts_PackedAndBack_AreTheSame() => GenBook.Draft.Array[0, 5].Sample(records => Same(DraftDocument.Form, records), iter: 100);

    [Fact]
    public void Weeks_PackedAndBack_AreTheSame() => GenBook.Weeks.Sample(
        weeks =>
        {
            Same(FillDocument.Form, [.. weeks.Fills]);
            Same(PurchaseDocument.Form, [.. weeks.Purchases]);
            Same(CountDocument.Form, [.. weeks.Counts]);
            Same(SettledDocument.Form, [.. weeks.Settled]);
            Same(ReturnDocument.Form, [.. weeks.Returns]);
            Same(CountDraftDocument.Form, weeks.Draft is { } draft ? [draft] : []);
        },
        iter: 100);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(64)]
    [InlineData(long.MaxValue)]
    [InlineData(long.MinValue)]
    public void Whole_PackedAndBack_IsTheSame(long number)
    {
        using var bytes = new MemoryStream();
        var texts = new TextTable();
        var writer = new PackedWriter(new BinaryWriter(bytes), texts);
        writer.Whole("", number);
        writer.OptionalWhole("", number);
        writer.OptionalWhole("", null);
        var reader = new PackedReader(new PackedBytes(bytes.ToArray(), 0), [], Samples.Usd);

        Assert.Equal(number, reader.Whole(""));
        Assert.Equal(number, reader.OptionalWhole(""));
        Assert.Null(reader.OptionalWhole(""));
    }

    // Heaps of few values are read on the stack.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(17)]
    [InlineData(200)]
    public void Notes_OfSoManyValues_AreTheSame(int values)
    {
        var notes = Notes.Of(Enumerable.Range(1, values).Select(value => KeyValuePair.Create((long)value, values - value)));
        using var bytes = new MemoryStream();
        var writer = new PackedWriter(new BinaryWriter(bytes), new TextTable());
        writer.OptionalNotes("", notes);
        writer.OptionalNotes("", null);
        writer.OptionalNotes("", notes);
        var reader = new PackedReader(new PackedBytes(bytes.ToArray(), 0), [], Samples.Usd);

        Assert.Equal(notes.ToString(), reader.OptionalNotes("")?.ToString());
        Assert.Null(reader.OptionalNotes(""));
        Assert.Equal(notes.ToString(), reader.OptionalNotes("")?.ToString());
    }

    private static void Same<T>(RecordForm<T> form, T[] records)
    {
        using var bytes = new MemoryStream();
        var texts = new TextTable();
        var writer = new PackedWriter(new BinaryWriter(bytes), texts);
        foreach (T record in records)
        {
            form.Write(writer, record);
        }

        var packed = new PackedBytes(bytes.ToArray(), 0);
        var reader = new PackedReader(packed, [.. texts.All], Samples.Usd);
        Assert.Equal(records.Select(record => Structure.Of(record)), records.Select(_ => Structure.Of(form.Read(reader))).ToArray());
        Assert.Equal(bytes.Length, packed.Position);
    }
}
