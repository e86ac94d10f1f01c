using CsCheck;
using Payday.Store.Databases;

namespace Payday.Store.Tests.Books;

/// <summary>What is written to a file that is only looked at is read from it again, and the file stays as it is.</summary>
public sealed class UnwrittenFileTests : IDisposable
{
    private const int Furthest = 30_000;
    private readonly ScratchFolder scratch = new();

    [Fact]
    public void Write_AnyPiecesAndCuts_ReadAsInMemoryAndNotInTheFile()
    {
        string path = scratch.Path("file");
        byte[] bytes = [.. Enumerable.Range(0, 20_001).Select(i => (byte)(i % 251))];
        File.WriteAllBytes(path, bytes);

        Gen.Select(Gen.Int[0, 3], Gen.Int[0, Furthest], Gen.Int[0, Furthest / 2]).Array[0, 12].Sample(
            works =>
            {
                UnwrittenFile file = new(path);
                using MemoryStream expected = new();
                expected.Write(bytes);
                foreach ((int kind, int at, int count) in works)
                {
                    if (kind == 0)
                    {
                        file.SetLength(at);
                        expected.SetLength(at);
                    }
                    else
                    {
                        file.Position = expected.Position = at;
                        byte[] piece = [.. Enumerable.Range(1, count).Select(i => (byte)(i * kind % 251))];
                        file.Write(piece, 0, count);
                        expected.Write(piece, 0, count);
                    }
                }

                byte[] read = new byte[file.Length];
                file.Position = 0;
                file.ReadExactly(read, 0, read.Length);
                file.CloseFile();
                Assert.Equal(expected.ToArray(), read);
            },
            iter: 300,
            threads: 1);

        Assert.Equal(bytes, File.ReadAllBytes(path));
    }

    [Fact]
    public void Open_FileThatIsMissing_IsEmptyAndStaysMissing()
    {
        string path = scratch.Path("none");

        UnwrittenFile file = new(path);
        file.Write([1, 2, 3], 0, 3);
        file.CloseFile();

        Assert.Equal(3, file.Length);
        Assert.False(File.Exists(path));
    }

    public void Dispose() => scratch.Dispose();
}
