namespace Payday.Journeys;

/// <summary>A data folder with the demo household, for one journey.</summary>
internal sealed class Household : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("payday-journey-").FullName;

    public Household() => ProgramUnderTest.Run($"import {ProgramUnderTest.Quoted(ProgramUnderTest.DemoFile)} --data {ProgramUnderTest.Quoted(folder)}");

    /// <summary>How a shell opens its screens.</summary>
    public string Command => $"{ProgramUnderTest.Command} --data {ProgramUnderTest.Quoted(folder)}";

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
