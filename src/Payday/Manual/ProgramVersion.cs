using System.Reflection;

namespace Payday.Manual;

/// <summary>Which version this is, as the build said it.</summary>
/// <param name="Number">Such as <c>0.1.0</c>.</param>
/// <param name="Date">The day of that version, such as <c>2026-11-28</c>.</param>
internal sealed record ProgramVersion(string Number, string Date)
{
    /// <summary>That of this program.</summary>
    public static ProgramVersion OfProgram()
    {
        Assembly program = typeof(ProgramVersion).Assembly;
        string number = program.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";
        string date = program.GetCustomAttributes<AssemblyMetadataAttribute>().FirstOrDefault(one => one.Key == "ReleaseDate")?.Value ?? "";
        return new ProgramVersion(number.Split('+')[0], date);
    }
}
