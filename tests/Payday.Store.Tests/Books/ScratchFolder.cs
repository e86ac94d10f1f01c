using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

/// <summary>A folder of its own for a test, gone afterwards.</summary>
internal sealed class ScratchFolder : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("payday-store-").FullName;

    /// <summary>A data folder that is not there yet.</summary>
    public StoreFolder Data => new(Path("data"));

    public string Path(string name) => System.IO.Path.Combine(root, name);

    public void Dispose() => Directory.Delete(root, recursive: true);
}
