using System.Diagnostics;
using System.Net.Sockets;

namespace Payday.Store.Tests.Files;

/// <summary>Puts things that are no files in the place of one.</summary>
internal static class SpecialFile
{
    public static readonly string[] Kinds = ["a named pipe", "a folder", "a device", "a socket", "a link"];

    /// <summary>Puts one of the kinds there; skips the test where this system can't.</summary>
    public static void Put(string kind, string path)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only on Linux are all kinds told apart.");
        if (Directory.Exists(path))
        {
            Directory.Delete(path, recursive: true);
        }

        File.Delete(path);
        switch (kind)
        {
            case "a folder":
                Directory.CreateDirectory(path);
                break;
            case "a link":
                File.CreateSymbolicLink(path, "/nowhere/at/all");
                break;
            case "a socket":
                using (var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified))
                {
                    // Its name is taken away as it is closed, so it is given another before.
                    socket.Bind(new UnixDomainSocketEndPoint(path + ".s"));
                    File.Move(path + ".s", path);
                }

                break;
            case "a device":
                Assert.SkipUnless(Run("mknod", path, "c", "1", "5"), "Only root can make a device.");
                break;
            default:
                Assert.True(Run("mkfifo", path));
                break;
        }
    }

    private static bool Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
