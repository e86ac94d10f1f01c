namespace Payday.Tests.House;

/// <summary>
/// The map in DEVELOPERS.md holds: every folder is on it, and uses only what is below it - so no arrow goes back and no
/// circle runs through the house.
/// </summary>
public sealed class HouseMapTests
{
    public static TheoryData<string> Parts => ["src/Payday.Core", "src/Payday.Store", "src/Payday.Statements", "src/Payday"];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Arrows_OfAPart_GoDownTheMap(string part)
    {
        IReadOnlyList<string> map = FolderMap.Of(part);
        var sources = PartSources.Of(part);

        Assert.Equal(sources.Folders.Order(StringComparer.Ordinal), map.Order(StringComparer.Ordinal));
        string[] back =
        [
            .. sources.Arrows
                .Where(arrow => map.Contains(arrow.From) && Level(map, arrow.To) > Level(map, arrow.From))
                .Select(arrow => $"{arrow.From} uses {arrow.To}, which is above it: {arrow.File} has {arrow.Name}")
                .Order(StringComparer.Ordinal),
        ];
        Assert.True(back.Length == 0, string.Join(Environment.NewLine, back));
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void Types_OfAPart_AreNotNamedLikeTheirFolder(string part) =>
        Assert.DoesNotContain(PartSources.Of(part).Types, type => type.Folder.Split('/')[^1] == type.Name);

    private static int Level(IReadOnlyList<string> map, string folder) => map.ToList().IndexOf(folder);
}
