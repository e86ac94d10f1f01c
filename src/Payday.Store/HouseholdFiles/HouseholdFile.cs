using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Payday.Core.Households;
using Payday.Store.Json;

namespace Payday.Store.HouseholdFiles;

/// <summary>The household as a JSON file that a person can read, write and keep.</summary>
/// <remarks>
/// Amounts are texts, so that no program on the way can round them. Reading finds all faults of a file at
/// once; what was written reads back to the same household, and writes again to the same bytes.
/// </remarks>
public static class HouseholdFile
{
    /// <summary>The version of the format that is written.</summary>
    /// <remarks>
    /// Version 2 has pots that say whether a payday's or month's cash is divided over the weeks, when they are needed again,
    /// and whether they are finished; and what the buffer keeps. A file of version 1 says none of it, and each has its usual meaning: cash that isn't
    /// for a week goes in the wallet at once, and a target is needed once. Version 3 has amounts that change from a date on, and an account that may begin below zero.
    /// </remarks>
    public const int Version = 3;

    /// <summary>The oldest version that is read.</summary>
    public const int OldestVersion = 1;

    internal static JsonWriterOptions Layout { get; } = new()
    {
        // The file is for people and for this program, never part of a web page: é stays é.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
    };

    /// <summary>Reads a household.</summary>
    /// <param name="json">The text of the file; any text at all, it never throws over what it says.</param>
    public static JsonReading<Household> Read(string json) => JsonInput.Read(json, HouseholdReader.Read);

    /// <summary>Reads a household from the bytes of a file.</summary>
    /// <param name="utf8">The bytes; any bytes at all.</param>
    public static JsonReading<Household> Read(ReadOnlyMemory<byte> utf8) => JsonInput.Read(utf8, HouseholdReader.Read);

    /// <summary>Reads a household that was stored once: its names are taken as they are.</summary>
    /// <param name="json">The text of the file.</param>
    internal static JsonReading<Household> ReadStored(string json) => JsonInput.Read(json, HouseholdReader.ReadStored);

    /// <summary>Writes a household.</summary>
    /// <returns>The text: fields in a fixed order, indented by 2, lines ended by LF, the last one too.</returns>
    /// <remarks>
    /// It writes what is there and does not judge it: to know whether a household made elsewhere would be
    /// taken, read what was written.
    /// </remarks>
    /// <exception cref="ArgumentException">
    /// The file could not hold all of it: an amount is in another currency, or an opening part belongs to
    /// no bill or pot.
    /// </exception>
    public static string Write(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Layout))
        {
            HouseholdWriter.Write(json, household);
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }
}
