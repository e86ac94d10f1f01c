using System.Text.Json;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;

namespace Payday.Store.Starts;

/// <summary>The file of the data folder that keeps a household while it is set up for the first time.</summary>
/// <param name="folder">The data folder, which is there.</param>
public sealed class StartFile(StoreFolder folder)
{
    private readonly string path = folder.Start;

    /// <summary>Whether there is one to go on with.</summary>
    public bool Exists => File.Exists(path);

    /// <summary>Reads it; null where there is none.</summary>
    /// <exception cref="StoreException">The file can't be read.</exception>
    public StartDraft? Read()
    {
        try
        {
            if (!Exists)
            {
                return null;
            }

            JsonReading<StartDraft> reading = JsonInput.Read(File.ReadAllBytes(path).AsMemory(), StartFormat.Read);
            return reading.Value ?? throw Unreadable(new FormatException(reading.Faults[0].ToString()));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw Unreadable(fault);
        }
    }

    /// <summary>Keeps it; it is on disk when this returns, whole or as it was before.</summary>
    /// <exception cref="StoreException">The file can't be written.</exception>
    public void Write(StartDraft start)
    {
        string beside = folder.UnfinishedStart;
        try
        {
            File.Delete(beside);
            using (FileStream file = PrivateFile.Open(beside, FileShare.None))
            {
                using (var json = new Utf8JsonWriter(file, HouseholdFile.Layout))
                {
                    StartFormat.Write(json, start);
                }

                file.Write("\n"u8);
                DiskSync.Of(file);
            }

            File.Move(beside, path, overwrite: true);
            FolderSync.OfFile(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(new StartFault.NotKept(path, Troubles.Of(fault)), fault);
        }
    }

    /// <summary>Takes it away, once the household is stored.</summary>
    public void Delete()
    {
        File.Delete(path);
        FolderSync.OfFile(path);
    }

    private StoreException Unreadable(Exception fault) => new(new StartFault.Unreadable(path), fault);
}
