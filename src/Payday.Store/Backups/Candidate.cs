using System.Collections.Immutable;
using Payday.Core.Households;
using Payday.Store.Contents;
using Payday.Store.Journals;
using Payday.Store.Recovery;

namespace Payday.Store.Backups;

/// <summary>One of the states that a store can be put back to.</summary>
public sealed class Candidate
{
    /// <summary>The journal, as far as it is sound.</summary>
    public const string Journal = "journal";

    /// <summary>The database, where it is sound.</summary>
    public const string Database = "database";

    private readonly JournalLine? last;

    private Candidate(string choice, ImmutableArray<JournalLine> lines, BookContent content, Book? book, JournalLine? last)
    {
        this.last = last;
        Choice = choice;
        Lines = lines;
        Content = content;
        Book = book;
    }

    /// <summary>What to call it by: <c>journal</c>, <c>database</c>, or the path of a backup or of a journal kept aside.</summary>
    public string Choice { get; }

    /// <summary>The book that it holds, or null where no household is in it.</summary>
    public Book? Book { get; }

    /// <summary>The number of its last change.</summary>
    public long Changes => last?.Number ?? 0;

    /// <summary>When its last change was made, in UTC, as the clock had it.</summary>
    public string At => last?.At ?? "";

    /// <summary>The lines of the journal that come to it.</summary>
    internal ImmutableArray<JournalLine> Lines { get; }

    /// <summary>The documents.</summary>
    internal BookContent Content { get; }

    /// <summary>All that can be put back: what is there now, then the backups, then journals kept aside, newest first. What is damaged is left out.</summary>
    internal static ImmutableArray<Candidate> All(StoreFolder folder)
    {
        IEnumerable<string> choices = [Journal, Database, .. BackupFiles.List(folder.Backups).Select(file => file.Path), .. AsideFiles.Journals(folder)];
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
                Database when DatabaseState.Read(folder) is DatabaseState.Sound sound => Of(folder, choice, JournalStart.Lines(sound.Content, folder.Clock), sound.Content, sound.Last),
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

    private static Candidate Of(StoreFolder folder, string choice, ImmutableArray<JournalLine> lines, BookContent content, JournalLine? last = null) =>
        new(choice, lines, content, ContentBook.Of(folder, content)?.Book, last ?? lines.LastOrDefault());
}
