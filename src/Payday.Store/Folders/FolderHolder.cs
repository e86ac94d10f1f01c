using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace Payday.Store.Folders;

/// <summary>Who has a data folder open.</summary>
/// <param name="Process">The number of the process; null where it is not known.</param>
/// <param name="Since">Since when, by the clock on the wall, to the minute; null where it is not known.</param>
public sealed record FolderHolder(int? Process, LocalDateTime? Since)
{
    private const string Begins = "process ";
    private const string Then = ", since ";
    private static readonly LocalDateTimePattern Minutes = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm");

    /// <summary>Somebody of whom nothing is known: on a full disk, or a damaged one, who it is can't be left in the folder.</summary>
    public static FolderHolder Unknown { get; } = new(null, null);

    /// <summary>In words as they stand in brackets, e.g. <c>process 4711, since 2026-03-02 08:15</c>.</summary>
    public override string ToString() => Process is { } process && Since is { } since
        ? string.Create(CultureInfo.InvariantCulture, $"{Begins}{process}{Then}{Minutes.Format(since)}")
        : "by whom is not known";

    /// <summary>Reads such words; <see cref="Unknown"/> where they are none.</summary>
    internal static FolderHolder Of(string words)
    {
        int then = words.IndexOf(Then, StringComparison.Ordinal);
        return words.StartsWith(Begins, StringComparison.Ordinal) && then > 0
            && int.TryParse(words.AsSpan(Begins.Length, then - Begins.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int process)
            && Minutes.Parse(words[(then + Then.Length)..]) is { Success: true } since
            ? new FolderHolder(process, since.Value)
            : Unknown;
    }
}
