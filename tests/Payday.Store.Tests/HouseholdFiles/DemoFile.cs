namespace Payday.Store.Tests.HouseholdFiles;

/// <summary>The demo household's file.</summary>
internal static class DemoFile
{
    /// <summary>Its text, found from wherever the tests run upwards.</summary>
    public static string Text { get; } = Find();

    private static string Find()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string file = Path.Combine(folder.FullName, "demo", "household.json");
            if (File.Exists(file))
            {
                return File.ReadAllText(file);
            }
        }

        throw new FileNotFoundException("demo/household.json is not above the tests.");
    }
}
