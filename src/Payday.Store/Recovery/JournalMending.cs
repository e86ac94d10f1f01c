using System.Collections.Immutable;
using System.Globalization;
using Payday.Store.Backups;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Mends a folder whose database is sound: the journal may be behind it, ahead of it, torn or damaged.</summary>
/// <param name="folder">The folder.</param>
/// <param name="journal">Its journal as it was read.</param>
/// <param name="database">Its database as it was read.</param>
internal sealed class JournalMending(StoreFolder folder, JournalScan journal, DatabaseState.Sound database)
{
    /// <summary>Mends it.</summary>
    /// <exception cref="StoreException">The two tell different things.</exception>
    public ImmutableArray<string> Mend()
    {
        if (database.Last is { } known && !Holds(known) && journal.IsWhole && journal.Last?.Digest == database.Content.Digest)
        {
            // A journal that was begun anew, and the program ended before the database was told.
            InDatabase(open => open.Mark(journal.Last));
            return [];
        }

        ImmutableArray<JournalLine> after = After();
        long last = (after.LastOrDefault() ?? database.Last)?.Number ?? 0;
        if (All().Any(line => line.Number > last || (line.Number == database.Last?.Number && line.Sha != database.Last.Sha)))
        {
            throw Mending.Undecided(
                folder, $"{folder.Database} ({database.Last?.ToString() ?? "nothing stored"}) and {folder.Journal} tell different things.", journal);
        }

        // The journal first: once it is whole, a database that fails under the work can be made from it.
        Foresee(after);
        ImmutableArray<string> told = [.. Behind(after), .. Whole(after, out JournalLine? end)];
        CatchUp(after, end);
        return told;
    }

    private string Wrong => journal.Length == 0 ? "The journal was missing."
        : journal.Last is { } last ? $"The journal was damaged after {last}."
        : "The journal was damaged from its beginning.";

    private IEnumerable<JournalLine> All() => journal.Lines.Concat(journal.Loose);

    private bool Holds(JournalLine wanted) => All().Any(line => line.Sha == wanted.Sha);

    // The lines that follow on from what the database has, wherever in the file they are.
    private ImmutableArray<JournalLine> After()
    {
        var found = ImmutableArray.CreateBuilder<JournalLine>();
        ILookup<string, JournalLine> byPrevious = All().ToLookup(line => line.Previous, StringComparer.Ordinal);
        JournalLine? at = database.Last;
        while (byPrevious[at?.Sha ?? JournalLine.Nothing].FirstOrDefault(line => line.Follows(at)) is { } next)
        {
            found.Add(next);
            at = next;
        }

        return found.ToImmutable();
    }

    // What the documents will be; nothing is written yet.
    private void Foresee(ImmutableArray<JournalLine> after)
    {
        foreach (JournalLine line in after)
        {
            foreach (Edit edit in line.Edits())
            {
                database.Content.Apply(edit);
            }

            if (database.Content.Digest != line.Digest)
            {
                throw Mending.Undecided(folder, $"{folder.Journal} holds {line}, which doesn't come to what it says.", journal);
            }
        }
    }

    private void CatchUp(ImmutableArray<JournalLine> after, JournalLine? end) => InDatabase(open =>
    {
        foreach (JournalLine line in after)
        {
            open.Take(line, line.Edits());
        }

        if (open.LastLine?.Sha != end?.Sha)
        {
            open.Mark(end);
        }
    });

    // One change ahead is what a program leaves that was ended between its two files: nothing to tell.
    private IEnumerable<string> Behind(ImmutableArray<JournalLine> after) => after.Length > 1
        ? [string.Create(CultureInfo.InvariantCulture, $"{folder.Database} was {after.Length} changes behind the journal and has taken them from there; nothing is lost.")]
        : [];

    // Gives the journal what it lacks and takes off what is not of it.
    private IEnumerable<string> Whole(ImmutableArray<JournalLine> after, out JournalLine? end)
    {
        end = after.LastOrDefault() ?? database.Last;
        if (journal.IsWhole && journal.Last?.Sha == end?.Sha)
        {
            return [];
        }

        string? wanted = end?.Sha;
        ImmutableArray<JournalLine> lines = Joined(journal.Lines, after);
        string told = lines.Length > journal.Lines.Length
            ? $"The journal lacked change {(journal.Last?.Number ?? 0) + 1} and what comes after, and has it back from the database; nothing is lost."
            : $"The journal ended in {journal.Length - journal.SoundLength} bytes that are no confirmed change, as after a power cut; they were taken off, and all that was confirmed is there. A copy is kept in {folder.Aside}.";
        if (lines.LastOrDefault()?.Sha != wanted || (lines.Length > 0 && lines[0].Of > lines.Length))
        {
            lines = BackupFiles.Lines(folder).Select(backup => Joined(backup, after)).FirstOrDefault(joined => joined.LastOrDefault()?.Sha == wanted);
            told = $"{Wrong} Its lines are back from a backup and the database.{(journal.Length == 0 ? "" : $" The damaged one is kept in {folder.Aside}.")}";
        }

        if (lines.IsDefaultOrEmpty && end is not null)
        {
            if (BackupFiles.GoingOn(folder, end) is { } further)
            {
                throw Mending.Undecided(folder, $"{folder.Database} ends with {end}.", journal, $" A backup goes on to change {further.Number}.");
            }

            lines = JournalStart.Lines(database.Content, folder.Clock);
            told = $"{Wrong} It begins anew with all that the database holds, up to {end}; nothing is lost.{(journal.Length == 0 ? "" : $" The damaged one is kept in {folder.Aside}.")}";
        }

        AsideFiles.CopyJournal(folder);
        JournalStart.Write(folder, lines);
        end = lines.LastOrDefault();
        return [told];
    }

    // A beginning with the database's line and those after it, as far as each follows on.
    private ImmutableArray<JournalLine> Joined(ImmutableArray<JournalLine> beginning, ImmutableArray<JournalLine> after)
    {
        var joined = beginning.ToBuilder();
        IEnumerable<JournalLine> loose = after.Concat(journal.Loose);
        foreach (JournalLine line in (database.Last is { } last ? loose.Append(last) : loose).OrderBy(line => line.Number))
        {
            if (line.Follows(joined.LastOrDefault()))
            {
                joined.Add(line);
            }
        }

        return joined.ToImmutable();
    }

    private void InDatabase(Action<BookDatabase> work)
    {
        using BookDatabase open = BookDatabase.Open(folder);
        work(open);
    }
}
