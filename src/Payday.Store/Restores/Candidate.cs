using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Fields;
using Payday.Store.Folders;
using Payday.Store.Journals;
using Payday.Store.Recovery;
using Payday.Store.Snapshots;

namespace Payday.Store.Restores;

/// <summary>One of the states that a store can be put back to.</summary>
public sealed class Candidate
{
    /// <summary>The journal, as far as it is sound.</summary>
    public const string Journal = "journal";

    /// <summary>The database, where it is sound.</summary>
    public const string Database = "database";

    /// <summary>The snapshot, where it has what the journal hasn't.</summary>
    public const string Snapshot = "snapshot";

    private Candidate(string choice, ImmutableArray<JournalLine> lines, BookContent content, Book? book)
    {
        Choice = choice;
        Lines = lines;
        Content = content;
        Book = book;
    }

    /// <summary>What to call it by: <c>journal</c>, <c>database</c>, <c>snapshot</c>, or the path of a backup or of a journal kept aside.</summary>
    public string Choice { get; }

    /// <summary>The book that it holds, or null where no household is in it.</summary>
    public Book? Book { get; }

    /// <summary>The number of its last change.</summary>
    public long Changes { get; private init; }

    /// <summary>When its last change was made, in UTC, as the clock had it; empty where that is not known.</summary>
    public string At { get; private init; } = "";

    // Which book it is of; empty where that is not known.
    private string Named { get; init; } = "";

    /// <summary>Whether it is of another book than another one, and not a state of the same: a backup of another household, say.</summary>
    public bool IsOfAnotherBook(Candidate other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return BookName.Differ(Named, other.Named);
    }

    /// <summary>The lines of the journal that come to it.</summary>
    internal ImmutableArray<JournalLine> Lines { get; }

    /// <summary>The documents.</summary>
    internal BookContent Content { get; }

    /// <summary>All that can be put back: what is there now, then the backups, then journals kept aside, newest first. What is damaged is left out.</summary>
    internal static ImmutableArray<Candidate> All(StoreFolder folder)
    {
        IEnumerable<string> choices = [Journal, Database, Snapshot, .. BackupFiles.List(folder.Backups).Select(file => file.Path), .. AsideFiles.Journals(folder)];
        return [.. choices.Select(choice => TryRead(folder, choice)).OfType<Candidate>()];
    }

    /// <summary>Reads one; null where it is not there or not sound.</summary>
    internal static Candidate? TryRead(StoreFolder folder, string choice)
    {
        try
        {
            return choice switch
            {
                Journal when JournalScan.Read(folder.Journal) is { HasItsBeginning: true, Last: not null } scan => Of(folder, choice, scan.Lines, scan.Content()),
                Journal => null,
                Database when DatabaseState.Read(folder) is DatabaseState.Sound sound => OfContent(folder, choice, sound.Content, sound.Last?.Number ?? 0, sound.Last?.At ?? "", sound.Last?.Book),
                Snapshot => OfSnapshot(folder),
                Database => null,
                _ when choice.EndsWith(Path.GetExtension(folder.Journal), StringComparison.Ordinal) =>
                    JournalScan.Read(choice) is { IsWhole: true, Last: not null } scan ? Of(folder, choice, scan.Lines, scan.Content()) : null,
                _ when BackupFiles.TryRead(choice) is { } scan => Of(folder, choice, scan.Lines, scan.Content()),
                _ => null,
            };
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            return null;
        }
    }

    // What the journal comes to as well is no choice of its own.
    private static Candidate? OfSnapshot(StoreFolder folder)
    {
        if (SnapshotFile.TryRead(folder) is not { } snapshot || IsInJournal(folder, snapshot.Place))
        {
            return null;
        }

        return OfContent(folder, Snapshot, BookContent.Of(snapshot.Records), snapshot.Place.Number, "", null);
    }

    private static bool IsInJournal(StoreFolder folder, JournalPlace place) =>
        JournalScan.Read(folder.Journal).Lines.Any(line => line.Number == place.Number && line.Sha == place.Sha);

    private static Candidate Of(StoreFolder folder, string choice, ImmutableArray<JournalLine> lines, BookContent content) =>
        new(choice, lines, content, ContentBook.Of(folder, content)?.Book) { Changes = lines[^1].Number, At = lines[^1].At, Named = lines[^1].Book };

    private static Candidate OfContent(StoreFolder folder, string choice, BookContent content, long changes, string at, string? book)
    {
        string name = string.IsNullOrEmpty(book) ? BookName.New() : book;
        return new(choice, JournalStart.Lines(content, folder.Clock, name), content, ContentBook.Of(folder, content)?.Book) { Changes = changes, At = at, Named = book ?? "" };
    }
}
