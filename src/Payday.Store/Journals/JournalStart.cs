using System.Collections.Immutable;
using Payday.Store.Contents;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Journals;

/// <summary>Writes a whole journal, under another name until it is whole and synced.</summary>
internal static class JournalStart
{
    private const int EditsALine = 500;
    private const int BytesALine = JournalLine.Longest / 4;

    /// <summary>The lines of a journal that begins with content.</summary>
    /// <param name="content">The content.</param>
    /// <param name="clock">What says the time they are of.</param>
    /// <param name="book">Which book it is.</param>
    public static ImmutableArray<JournalLine> Lines(BookContent content, TimeProvider clock, string book)
    {
        List<List<Edit>> parts = Parts(content);
        var lines = ImmutableArray.CreateBuilder<JournalLine>(parts.Count);
        Digest digest = default;
        foreach (List<Edit> part in parts)
        {
            digest = part.Aggregate(digest, (sum, edit) => sum + Digest.Of(edit.Collection, edit.Document!));
            lines.Add(JournalLine.Make(lines.LastOrDefault(), part, digest, clock.GetUtcNow(), book, parts.Count));
        }

        return lines.ToImmutable();
    }

    // No document is larger than a line may be, or it had not been stored.
    private static List<List<Edit>> Parts(BookContent content)
    {
        List<List<Edit>> parts = [];
        int bytes = BytesALine;
        foreach (Edit edit in content.Edits)
        {
            if (bytes >= BytesALine || parts[^1].Count == EditsALine)
            {
                parts.Add([]);
                bytes = 0;
            }

            parts[^1].Add(edit);
            bytes += DocumentJson.Utf8(edit.Collection, edit.Document!).Length;
        }

        return parts;
    }

    /// <summary>Puts a journal of these lines in the place of the one there. The snapshot goes: it may be of what is no more.</summary>
    public static void Write(StoreFolder folder, IEnumerable<JournalLine> lines)
    {
        File.Delete(folder.Snapshot);
        File.Delete(folder.UnfinishedJournal);
        using (FileStream unbuffered = PrivateFile.Open(folder.UnfinishedJournal, FileShare.None))
        {
            using var file = new BufferedStream(unbuffered, 1 << 20);
            foreach (JournalLine line in lines)
            {
                file.Write(line.Text.Span);
                file.WriteByte((byte)'\n');
            }

            file.Flush();
            DiskSync.Of(unbuffered);
        }

        File.Move(folder.UnfinishedJournal, folder.Journal, overwrite: true);
        FolderSync.Of(folder.Path);
    }
}
