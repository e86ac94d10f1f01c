using System.Diagnostics;

namespace Payday.Tests.Faults;

/// <summary>Disks for faults that an ordinary one doesn't have; only root on Linux can mount them.</summary>
internal static class Disk
{
    /// <summary>Mounts an empty small disk in memory over a folder; returns whether this could be done.</summary>
    public static bool Small(string path, int kilobytes) =>
        OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess && Run("mount", "-t", "tmpfs", "-o", $"size={kilobytes}k,mode=700", "tmpfs", path);

    /// <summary>Shows a file at the place of another one; returns whether this could be done.</summary>
    public static bool Show(string file, string at) => OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess && Run("mount", "--bind", file, at);

    /// <summary>Makes a disk mounted here read-only.</summary>
    public static void ReadOnly(string path) => Assert.True(Run("mount", "-o", "remount,ro", path));

    /// <summary>Takes it away.</summary>
    public static void Remove(string path) => Run("umount", "--lazy", path);

    private static bool Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
