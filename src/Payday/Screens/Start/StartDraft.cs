using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using NodaTime;
using NodaTime.Text;
using Payday.Screens.Setup;
using Payday.Store.Fields;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Screens.Start;

/// <summary>A household that is being set up for the first time, in a file of the data folder.</summary>
/// <remarks>
/// It is no household of the store before it is begun: until then the currency may change, and what was there at
/// the start is written to the ledger once, when it is known.
/// </remarks>
/// <param name="folder">The data folder, which is there.</param>
internal sealed class StartDraft(StoreFolder folder)
{
    private const string Parts = "parts";
    private const string HouseholdField = "household";
    private const string BegunField = "begun";
    private readonly string path = Path.Combine(folder.Path, "start.json");

    /// <summary>Whether there is one to go on with.</summary>
    public bool Exists => File.Exists(path);

    /// <summary>A household with nothing in it but the usual choices.</summary>
    public static JsonObject Fresh(LocalDate today) => new()
    {
        ["version"] = Store.HouseholdFiles.HouseholdFile.Version,
        ["start"] = LocalDatePattern.Iso.Format(today),
        ["numbers"] = "1,234.56",
        ["fillDay"] = "Friday",
        ["holidays"] = new JsonObject { ["set"] = "none" },
        ["bank"] = new JsonObject { ["kind"] = "teller" },
        ["opening"] = new JsonObject { ["account"] = "0" },
    };

    /// <summary>Reads it: the household so far, the parts that were gone through, and by list the item that isn't complete yet.</summary>
    /// <exception cref="StoreException">The file can't be read.</exception>
    public (JsonObject Household, IReadOnlySet<string> Passed, JsonObject Begun) Read(LocalDate today)
    {
        try
        {
            if (!Exists)
            {
                return (Fresh(today), new HashSet<string>(), []);
            }

            JsonObject file = JsonNode.Parse(File.ReadAllText(path))!.AsObject();
            JsonObject household = HouseholdNodes.Parse(file[HouseholdField]!.ToJsonString());
            var begun = (JsonObject?)file[BegunField]?.AsObject().DeepClone();
            return (household, file[Parts]!.AsArray().Select(part => part!.ToString()).ToHashSet(StringComparer.Ordinal), begun ?? []);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException or InvalidOperationException or NullReferenceException)
        {
            throw new StoreException($"{path} can't be read, so the household begun there can't be taken up. Nothing was changed; move the file away to begin anew.", fault);
        }
    }

    /// <summary>Keeps it; it is on disk when this returns, whole or as it was before.</summary>
    /// <exception cref="StoreException">The file can't be written.</exception>
    public void Write(JsonObject household, IEnumerable<string> passed, JsonObject begun)
    {
        var file = new JsonObject
        {
            [Parts] = new JsonArray([.. passed.Order(StringComparer.Ordinal).Select(part => (JsonNode)JsonValue.Create(part))]),
            [HouseholdField] = household.DeepClone(),
        };
        if (begun.Count > 0)
        {
            file[BegunField] = begun.DeepClone();
        }

        string beside = path + ".new";
        try
        {
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            }

            using (var stream = new FileStream(beside, options))
            {
                stream.Write(Encoding.UTF8.GetBytes(HouseholdNodes.Text(file)));
                stream.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException($"{path} can't be written: {fault.Message.Split('\n')[0]} What was entered last is not kept.", fault);
        }
    }

    /// <summary>Takes it away, once the household is stored.</summary>
    public void Delete() => File.Delete(path);
}
