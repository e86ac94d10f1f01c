using System.Runtime.InteropServices;
using System.Text;

namespace Payday.Commands;

/// <summary>Standard input, output and error of this process, also where the shell closed them.</summary>
/// <remarks>
/// A number that the shell closed is given to the next file that is opened, and an answer would then be written into that:
/// the journal, say. So whatever stands there and isn't the shell's is never written to, and a free number is taken first.
/// </remarks>
internal static partial class StandardStreams
{
    private const int In = 0;
    private const int Out = 1;
    private const int Error = 2;

    // fcntl(2): asks for a descriptor's flags. The only flag says that it doesn't outlive an exec, so the shell's never have it.
    private const int GetFlags = 1;

    // SIGPIPE and SIG_IGN.
    private const int BrokenPipe = 13;
    private const nint Ignore = 1;

    /// <summary>Where answers go; writing there throws an <see cref="IOException"/> where the shell closed it.</summary>
    public static TextWriter Output { get; private set; } = TextWriter.Null;

    /// <summary>Where refusals go; what can't be written there is dropped.</summary>
    public static TextWriter Errors { get; private set; } = TextWriter.Null;

    /// <summary>What is read for <c>-</c>; it throws <see cref="DecoderFallbackException"/> for what is no text in UTF-8.</summary>
    public static TextReader Input { get; private set; } = TextReader.Null;

    /// <summary>Takes them from the shell. Has to come before any file is opened.</summary>
    public static void Take()
    {
        bool input = IsOfShell(In);
        bool output = IsOfShell(Out);
        bool errors = IsOfShell(Error);
        Output = output ? Writer(Out) : new ClosedWriter();
        Errors = new QuietWriter(errors ? Writer(Error) : TextWriter.Null);
        Input = input ? new StreamReader(Stream(In), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true)) : TextReader.Null;
        if (!OperatingSystem.IsWindows())
        {
            // A reader that leaves early must not end this process before it has told what it did by its exit code.
            _ = Signal(BrokenPipe, Ignore);
        }
    }

    // In the person's encoding, as the console's own writer.
    private static StreamWriter Writer(int number)
    {
        Encoding encoding = Console.OutputEncoding;
        return new StreamWriter(Stream(number), encoding is UTF8Encoding ? new UTF8Encoding(encoderShouldEmitUTF8Identifier: false) : encoding) { AutoFlush = true };
    }

    private static Stream Stream(int number) => !OperatingSystem.IsWindows() ? new DescriptorStream(number)
        : number == In ? Console.OpenStandardInput()
        : number == Out ? Console.OpenStandardOutput()
        : Console.OpenStandardError();

    private static bool IsOfShell(int number)
    {
        if (OperatingSystem.IsWindows())
        {
            return true;
        }

        int flags = Flags(number, GetFlags);
        if (flags < 0)
        {
            // Held for good, and of no use: neither can it be read from nor written to.
            _ = Open("/dev/null", number == In ? (int)UnixOpen.Write : (int)UnixOpen.Read);
        }

        return flags == 0;
    }

    [LibraryImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Flags(int number, int command);

    [LibraryImport("libc", EntryPoint = "signal")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint Signal(int number, nint handler);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Open(string path, int flags);

    // POSIX leaves the numbers open; these are those of every Unix here.
    private enum UnixOpen
    {
        Read = 0,
        Write = 1,
    }
}
