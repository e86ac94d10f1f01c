using System.Diagnostics;

namespace Payday.Store.Tests.Books;

/// <summary>A small disk of its own, for faults that root would not meet on an ordinary one; gone afterwards.</summary>
internal sealed class Mount : IDisposable
{
    private readonly string path;

    private Mount(string path) => this.path = path;

    /// <summary>Mounts an empty disk in memory at a folder, which is made; skips the test where this can't be done.</summary>
    public static Mount SmallDisk(string path, int kilobytes)
    {
        Directory.CreateDirectory(path);
        return Made(path, "-t", "tmpfs", "-o", $"size={kilobytes}k", "tmpfs", path);
    }

    /// <summary>Shows a file or folder at its own place, but read-only; skips the test where this can't be done.</summary>
    public static Mount ReadOnly(string path)
    {
        Mount mount = Made(path, "--bind", path, path);
        if (!Run("mount", "-o", "remount,bind,ro", path))
        {
            mount.Dispose();
            Assert.Skip("This system doesn't let the tests mount a disk read-only.");
        }

        return mount;
    }

    public void Dispose() => Run("umount", path);

    private static Mount Made(string path, params string[] arguments)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Only root on Linux can mount a disk for a test.");
        Assert.SkipUnless(Run("mount", arguments), "This system doesn't let the tests mount a disk.");
        return new Mount(path);
    }

    private static bool Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
