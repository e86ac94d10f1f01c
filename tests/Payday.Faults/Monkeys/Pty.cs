using System.ComponentModel;
using System.Runtime.InteropServices;
using System.Text;

namespace Payday.Faults.Monkeys;

/// <summary>A pseudoterminal: this side of it; the other one has a path.</summary>
/// <remarks>POSIX.1-2017, posix_openpt() and those that follow it there; sizes and settings as on Linux.</remarks>
internal sealed class Pty : IDisposable
{
    private const int ReadWrite = 2;
    private const int NotControlling = 0x100;
    private const nuint SetSize = 0x5414;
    private const int SettingsRoom = 256;
    private const int SettingsLength = 36;
    private const short Readable = 0x001;
    private const short Writable = 0x004;
    private const int Closed = 0x008 | 0x010;

    private readonly int ours;

    // Kept open so that what the program leaves behind can still be seen when it has ended.
    private readonly int theirs;

    public Pty()
    {
        ours = Sound(posix_openpt(ReadWrite | NotControlling));
        Sound(grantpt(ours));
        Sound(unlockpt(ours));
        byte[] name = new byte[128];
        Sound(ptsname_r(ours, name, (nuint)name.Length));
        Path = Encoding.ASCII.GetString(name.AsSpan(0, Array.IndexOf(name, (byte)0)));
        theirs = Sound(open(Path, ReadWrite | NotControlling));
    }

    /// <summary>The path of the other side.</summary>
    public string Path { get; }

    /// <summary>Line discipline, echo and the like, to compare.</summary>
    public string Settings
    {
        get
        {
            byte[] settings = new byte[SettingsRoom];
            Sound(tcgetattr(theirs, settings));

            // BRKINT and IMAXBEL, which the library's way back from the background sets and no shell minds.
            settings[0] &= unchecked((byte)~0x02);
            settings[1] &= unchecked((byte)~0x20);
            return Convert.ToHexString(settings, 0, SettingsLength);
        }
    }

    /// <summary>Whether this machine can make one.</summary>
    public static bool CanBeMade => OperatingSystem.IsLinux() && File.Exists("/usr/bin/setsid");

    /// <summary>Makes it another size; whoever has it as its terminal gets SIGWINCH.</summary>
    public void Resize(int width, int height)
    {
        byte[] size = [.. BitConverter.GetBytes((ushort)height), .. BitConverter.GetBytes((ushort)width), 0, 0, 0, 0];
        Sound(ioctl(ours, SetSize, size));
    }

    /// <summary>What the program has written, up to so many bytes; empty where there is nothing before the time is over.</summary>
    public ReadOnlySpan<byte> Read(byte[] buffer, int milliseconds)
    {
        var descriptor = new PollFd { Descriptor = ours, Events = Readable };
        if (poll(ref descriptor, 1, milliseconds) <= 0 || (descriptor.Returned & Readable) == 0)
        {
            if ((descriptor.Returned & Closed) != 0)
            {
                Thread.Sleep(milliseconds);
            }

            return [];
        }

        nint count = read(ours, buffer, (nuint)buffer.Length);
        return buffer.AsSpan(0, (int)Math.Max(0, count));
    }

    /// <summary>Sends a part of some bytes; none where the program takes no more before the time is over.</summary>
    /// <returns>How many were sent.</returns>
    public int Write(ReadOnlySpan<byte> bytes, int milliseconds)
    {
        var descriptor = new PollFd { Descriptor = ours, Events = Writable };
        if (poll(ref descriptor, 1, milliseconds) <= 0 || (descriptor.Returned & Writable) == 0)
        {
            return 0;
        }

        // A terminal takes some kilobytes at once; more would wait.
        byte[] some = bytes[..Math.Min(bytes.Length, 256)].ToArray();
        return (int)Math.Max(0, write(ours, some, (nuint)some.Length));
    }

    /// <summary>Sends a signal to a process.</summary>
    public static void Signal(int process, int signal) => _ = kill(process, signal);

    public void Dispose()
    {
        _ = close(theirs);
        _ = close(ours);
    }

    private static int Sound(int returned) => returned >= 0 ? returned : throw new Win32Exception(Marshal.GetLastPInvokeError());

#pragma warning disable IDE1006, SYSLIB1054 // Named as the system names them.
    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int posix_openpt(int flags);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int grantpt(int descriptor);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int unlockpt(int descriptor);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ptsname_r(int descriptor, byte[] buffer, nuint length);

    [DllImport("libc", SetLastError = true, CharSet = CharSet.Ansi, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int open(string path, int flags);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int tcgetattr(int descriptor, byte[] settings);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ioctl(int descriptor, nuint request, byte[] argument);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int poll(ref PollFd descriptors, nuint count, int milliseconds);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint read(int descriptor, byte[] buffer, nuint count);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint write(int descriptor, byte[] buffer, nuint count);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int close(int descriptor);

    [DllImport("libc", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int kill(int process, int signal);
#pragma warning restore IDE1006, SYSLIB1054

    [StructLayout(LayoutKind.Sequential)]
    private struct PollFd
    {
        public int Descriptor;
        public short Events;
        public short Returned;
    }
}
