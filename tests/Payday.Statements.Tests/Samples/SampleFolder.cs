namespace Payday.Statements.Tests.Samples;

/// <summary>Published sample files, which stay outside the project: beside it in <c>shared/samples</c>, where they are there.</summary>
internal static class SampleFolder
{
    /// <summary>The folder, or null.</summary>
    public static string? Path { get; } = Find();

    /// <summary>A sample's bytes; the test is skipped where the folder isn't there.</summary>
    public static byte[] Read(string name)
    {
        Assert.SkipWhen(Path is null, "The published samples are not beside the project.");
        return File.ReadAllBytes(System.IO.Path.Combine(Path!, name));
    }

    private static string? Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string samples = System.IO.Path.Combine(folder.FullName, "shared", "samples");
            if (Directory.Exists(samples))
            {
                return samples;
            }
        }

        return null;
    }
}
