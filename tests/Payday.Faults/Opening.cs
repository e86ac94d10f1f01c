using Payday.Store;
using Payday.Store.Checks;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Recovery;
using Payday.Texts;

namespace Payday.Faults;

/// <summary>Opens a store that something was done to, goes on in it, checks it whole and mends what only a whole look finds.</summary>
/// <param name="Folder">The store.</param>
/// <param name="Sound">The digest of the book that was acknowledged.</param>
internal sealed record Opening(StoreFolder Folder, Digest Sound)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <summary>The digests of books of before, which may come out where that is said.</summary>
    public IReadOnlySet<Digest> Older { get; init; } = new HashSet<Digest>();

    /// <summary>Whether a change is made before the store is checked, on whatever there is.</summary>
    public bool GoesOn { get; init; }

    /// <summary>Whether it must be told that there are copies that Payday did not make.</summary>
    public bool HasForeignCopy { get; init; }

    /// <summary>Does it, and holds what is shown and what is stored against what was.</summary>
    public (string Outcome, string Detail) Try()
    {
        Task<(string, string)> opened = Task.Run(Explained);
        return opened.Wait(Patience) ? opened.Result : ("CRASH", "it does not come to an end");
    }

    private (string Outcome, string Detail) Explained()
    {
        try
        {
            return Opened();
        }
        catch (StoreException fault)
        {
            return ("refused", fault.Said());
        }
        catch (Exception fault)
        {
            return ("CRASH", fault.ToString());
        }
    }

    private (string Outcome, string Detail) Opened()
    {
        (Digest shown, Digest last, string said, string doubts) = Shown(GoesOn);
        if (HasForeignCopy != doubts.Length > 0)
        {
            return ("WRONG", $"of copies beside it was said: {doubts}");
        }

        CheckReport report = StoreCheck.Run(Folder);
        StoreCheck.Mend(Folder);
        Finding[] left = [.. StoreCheck.Run(Folder).Findings.Where(finding => finding.Part != CheckPart.Backups)];
        Digest stored = DatabaseState.Read(Folder) is DatabaseState.Sound state ? state.Content.Digest : default;
        bool isKept = Shown(goesOn: false).First == last && stored == last;
        return (shown == Sound, said.Length > 0, report.Findings.Any(finding => finding.Part != CheckPart.Files)) switch
        {
            _ when left.Length > 0 => ("WRONG", $"not mended: {left[0].Said()}"),
            _ when !isKept => ("WRONG", $"mending makes another book of it; it said: {said}"),
            (true, true, _) => ("mended", ""),
            (true, _, true) => ("found", ""),
            (true, _, _) => ("same", ""),
            (_, true, _) when Older.Contains(shown) => ("older, said", said),
            _ => ("WRONG", $"another book; it said: {said}"),
        };
    }

    // What is shown at first and at last, and what is said.
    private (Digest First, Digest Last, string Said, string Doubts) Shown(bool goesOn)
    {
        using BookStore store = BookStore.Open(Folder);
        Digest first = BookDigest.Of(store.Load());
        Digest last = first;
        if (goesOn)
        {
            Life.Next(store);
            last = BookDigest.Of(store.Load());
        }

        string[] doubts = [.. FolderDoubts.Of(Folder).Select(StoreTexts.Of)];
        return (first, last, string.Join(' ', store.Told().Except(doubts)), string.Join(' ', doubts));
    }
}
