using Payday.Store.Backups;
using Payday.Store.Changes;
using Payday.Store.Restores;
using Payday.Store.Tests.Books;

namespace Payday.Store.Tests.Backups;

public sealed class SecondPlaceTests
{
    [Theory]
    [InlineData("stick")]
    [InlineData(" stick ")]
    [InlineData("stick\t")]
    [InlineData("two\nlines")]
    [InlineData("two\nlines\n")]
    [InlineData("\u00A0stick\u2003")]
    [InlineData("stick/../stick")]
    [InlineData("stick/")]
    public void Always_AnyFolder_IsTheOneThatWasNamed(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such names.");
        using var scratch = new ScratchFolder();
        Directory.CreateDirectory(scratch.Path("stick"));
        string place = scratch.Path(name);
        Directory.CreateDirectory(place);
        using BookStore store = Samples.Begun(scratch.Data);

        StoreBackups.Always(store, place);
        store.Save(new BookChange { Closed = [Samples.Closed(Samples.Payday, 1, 1)] });
        store.FinishBackups();

        Assert.Equal(place, SecondPlace.Of(scratch.Data));
        Assert.Single(Directory.GetFiles(place));
        Assert.Empty(store.Told());
    }
}
