namespace Payday.Tests.House;

/// <summary>The project that the tests run inside.</summary>
internal static class Repository
{
    /// <summary>Its top folder.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Payday.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests don't run inside the project.");
    }
}
