using System.IO.Compression;

namespace Payday.Store.Tests.Books;

/// <summary>A file of an earlier program, kept packed beside the tests.</summary>
internal static class KeptFile
{
    /// <summary>Where a file is.</summary>
    public static string PathOf(string name)
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string file = Path.Combine(folder.FullName, "tests", "Payday.Store.Tests", "Books", name);
            if (File.Exists(file))
            {
                return file;
            }
        }

        throw new FileNotFoundException($"{name} is not above the tests.");
    }

    /// <summary>Unpacks one.</summary>
    public static void Unpack(string name, string to)
    {
        using var packed = new GZipStream(File.OpenRead(PathOf(name)), CompressionMode.Decompress);
        using FileStream file = File.Create(to);
        packed.CopyTo(file);
    }
}
