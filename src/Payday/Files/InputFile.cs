using System.Text;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Store;
using Payday.Store.Files;
using Payday.Text;
using Payday.Texts;

namespace Payday.Files;

/// <summary>Reads a file that a person named, whole and never more than it may have.</summary>
internal static class InputFile
{
    private const int Piece = 1 << 16;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The bytes of a file.</summary>
    /// <param name="path">The path as given.</param>
    /// <param name="most">The most bytes it may have.</param>
    /// <returns>The bytes, or what is in the way.</returns>
    /// <remarks>A pipe or device is not opened: that could wait for ever. What the shell holds open for this process is read.</remarks>
    public static Result<byte[]> Bytes(string path, int most)
    {
        string shown = CleanText.OneLine(path);
        try
        {
            FileKind kind = path.Length == 0 ? FileKind.None : FileFacts.Behind(path).Kind;
            switch (kind)
            {
                case FileKind.Folder:
                    return Result.Refused<byte[]>(new ReadingFault.IsFolder(shown));
                case FileKind.Pipe or FileKind.Socket or FileKind.Device when !IsHeldOpen(path):
                    return Result.Refused<byte[]>(new ReadingFault.NeverEnds(shown, kind == FileKind.Device));
                case FileKind.None or FileKind.Blocked:
                    return Result.Refused<byte[]>(new ReadingFault.NotThere(shown));
                default:
                    using (var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0))
                    {
                        return Bytes(file, most) is { } bytes ? Result.Of(bytes) : TooLarge<byte[]>(shown, most);
                    }
            }
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return Result.Refused<byte[]>(new ReadingFault.NotThere(shown));
        }
        catch (UnauthorizedAccessException)
        {
            return Result.Refused<byte[]>(new ReadingFault.Denied(shown));
        }
        catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
        {
            return Result.Refused<byte[]>(new ReadingFault.Failed(shown, Troubles.Of(fault)));
        }
    }

    /// <summary>The text of a file, which is in UTF-8.</summary>
    /// <inheritdoc cref="Bytes(string, int)"/>
    public static Result<string> Text(string path, int most)
    {
        Result<byte[]> bytes = Bytes(path, most);
        return bytes.Ok ? Text(CleanText.OneLine(path), bytes.Value) : Result.Refused<string>(bytes.Fault);
    }

    /// <summary>The text that bytes are, where they are UTF-8.</summary>
    /// <param name="shown">What they were read from.</param>
    /// <param name="utf8">The bytes.</param>
    public static Result<string> Text(string shown, byte[] utf8)
    {
        try
        {
            return Result.Of(Strict.GetString(utf8));
        }
        catch (DecoderFallbackException)
        {
            return NoText<string>(shown);
        }
    }

    /// <summary>All that a reader gives, as UTF-8, such as that of standard input.</summary>
    /// <param name="reader">The reader; it throws <see cref="DecoderFallbackException"/> for what is no text.</param>
    /// <param name="shown">What to call it in the sentence.</param>
    /// <param name="most">The most bytes; a reader that never ends is left once it has given more.</param>
    public static Result<byte[]> Bytes(TextReader reader, string shown, int most)
    {
        var text = new StringBuilder();
        char[] piece = new char[Piece];
        try
        {
            while (reader.Read(piece, 0, piece.Length) is > 0 and var read)
            {
                text.Append(piece, 0, read);
                if (text.Length > most)
                {
                    return TooLarge<byte[]>(shown, most);
                }
            }

            return Result.Of(Encoding.UTF8.GetBytes(text.ToString()));
        }
        catch (DecoderFallbackException)
        {
            return NoText<byte[]>(shown);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            return Result.Refused<byte[]>(new ReadingFault.Failed(shown, Troubles.Of(fault)));
        }
    }

    private static byte[]? Bytes(Stream file, int most)
    {
        using var all = new MemoryStream();
        byte[] piece = new byte[Piece];
        while (file.Read(piece) is > 0 and var read)
        {
            if (all.Length + read > most)
            {
                return null;
            }

            all.Write(piece, 0, read);
        }

        return all.ToArray();
    }

    // The shell's <(...) is such a pipe: whoever writes to it is running already.
    private static bool IsHeldOpen(string path) =>
        path == "/dev/stdin" || path.StartsWith("/dev/fd/", StringComparison.Ordinal) || path.StartsWith("/proc/self/fd/", StringComparison.Ordinal);

    private static Result<T> TooLarge<T>(string shown, int most) =>
        Result.Refused<T>(new ReadingFault.TooLarge(shown, most));

    private static Result<T> NoText<T>(string shown) =>
        Result.Refused<T>(new ReadingFault.NoText(shown));
}
