using System.Runtime.CompilerServices;

namespace Payday.Tests.Slips;

/// <summary>Compares text with a file beside the tests.</summary>
/// <remarks>
/// A missing file fails. Only where the variable PAYDAY_WRITE_GOLDENS is set is a file written, and then the test
/// fails too where it was not right before, so that nobody takes that run for a check.
/// </remarks>
internal static class Golden
{
    public static void Equal(string name, IEnumerable<string> lines, [CallerFilePath] string caller = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(caller)!, "Golden", name + ".txt");
        string actual = string.Concat(lines.Select(line => line + "\n"));
        bool isRight = File.Exists(path) && File.ReadAllText(path) == actual;
        if (!isRight && Environment.GetEnvironmentVariable("PAYDAY_WRITE_GOLDENS") is { Length: > 0 })
        {
            File.WriteAllText(path, actual);
            Assert.Fail($"{name}.txt was written; look at it, then run again without PAYDAY_WRITE_GOLDENS.");
        }

        Assert.True(File.Exists(path), $"The golden {name}.txt is missing. The text is:\n{actual}");
        string expected = File.ReadAllText(path);
        Assert.True(expected == actual, $"{name}.txt differs.\n--- expected\n{expected}--- actual\n{actual}");
    }
}
