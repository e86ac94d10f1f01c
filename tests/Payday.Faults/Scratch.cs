using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Faults;

/// <summary>A throw-away data folder, in memory where the system has such a place and no disk is wanted.</summary>
internal sealed class Scratch : IDisposable
{
    private readonly string root;

    /// <param name="onDisk">Whether it is on a disk, where syncing takes its time.</param>
    public Scratch(bool onDisk = false)
    {
        string parent = !onDisk && Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath();
        root = Path.Combine(parent, "payday-faults-" + Path.GetRandomFileName());
        PrivateFolder.Make(root);
        Folder = new StoreFolder(Path.Combine(root, "data"));
    }

    /// <summary>The folder around the data folder.</summary>
    public string Root => root;

    public StoreFolder Folder { get; }

    /// <summary>Puts files in the place of all that is there.</summary>
    /// <param name="files">Their contents by path within the folder.</param>
    public void Put(IReadOnlyDictionary<string, byte[]> files)
    {
        if (Directory.Exists(Folder.Path))
        {
            Directory.Delete(Folder.Path, recursive: true);
        }

        PrivateFolder.Make(Folder.Path);
        foreach ((string name, byte[] bytes) in files)
        {
            string path = Path.Combine(Folder.Path, name);
            PrivateFolder.Make(Path.GetDirectoryName(path)!);
            using FileStream file = PrivateFile.Open(path, FileShare.None);
            file.Write(bytes);
        }
    }

    /// <summary>All files of the folder, also while it is open.</summary>
    public Dictionary<string, byte[]> Take() => LiveFolder.Read(() => Directory.GetFiles(Folder.Path, "*", SearchOption.AllDirectories)
        .ToDictionary(path => Path.GetRelativePath(Folder.Path, path), Bytes, StringComparer.Ordinal));

    public void Dispose() => Directory.Delete(root, recursive: true);

    // Nobody can read the lock while it is held; it is empty.
    private byte[] Bytes(string path)
    {
        if (path == Folder.Lock)
        {
            return [];
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }
}
