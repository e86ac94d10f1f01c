using System.Collections.Immutable;
using Payday.Store.Backups;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Mends a folder whose database is sound: the journal may be behind it, ahead of it, torn or damaged.</summary>
internal sealed class JournalMending : IMending
{
    private readonly StoreFolder folder;
    private readonly JournalScan journal;
    private readonly DatabaseState.Sound database;

    // What the database lacks.
    private readonly ImmutableArray<JournalLine> after = [];

    // The journal as it is to be; null where it is right as it is.
    private readonly ImmutableArray<JournalLine>? whole;
    private readonly JournalLine? end;
    private readonly ImmutableArray<StoreFault> told = [];

    /// <param name="folder">The folder.</param>
    /// <param name="journal">Its journal as it was read.</param>
    /// <param name="database">Its database as it was read; what it lacks is put into its content.</param>
    /// <exception cref="StoreException">The two tell different things.</exception>
    public JournalMending(StoreFolder folder, JournalScan journal, DatabaseState.Sound database)
    {
        (this.folder, this.journal, this.database) = (folder, journal, database);
        if (database.Last is { } known && !Holds(known) && journal.IsWhole && journal.Last?.Digest == database.Content.Digest)
        {
            // A journal that was begun anew, and the program ended before the database was told.
            end = journal.Last;
            return;
        }

        after = After();
        end = after.LastOrDefault() ?? database.Last;
        long last = end?.Number ?? 0;
        if (All().Any(line => line.Number > last || (line.Number == database.Last?.Number && line.Sha != database.Last.Sha)))
        {
            throw Mending.Undecided(new DatabaseFault.Contradicted(folder.Database, database.Last?.Mark, folder.Journal), journal);
        }

        Foresee();
        StoreFault[] behind = [.. Behind()];
        (whole, StoreFault[] mended) = Whole();
        told = [.. behind, .. mended];
        end = whole is { } lines ? lines.LastOrDefault() : end;
    }

    /// <inheritdoc/>
    public ImmutableArray<StoreFault> Do()
    {
        // The journal first: once it is whole, a database that fails under the work can be made from it.
        if (whole is { } lines)
        {
            AsideFiles.CopyJournal(folder);
            JournalStart.Write(folder, lines);
        }

        using BookDatabase open = BookDatabase.Open(folder);
        foreach (JournalLine line in after)
        {
            open.Take(line, line.Edits());
        }

        if (open.LastLine?.Sha != end?.Sha)
        {
            open.Mark(end);
        }

        return told;
    }

    private JournalFault Wrong => journal.Length == 0 ? new JournalFault.Missing() : new JournalFault.DamagedAfter(journal.Last?.Mark);

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
    private void Foresee()
    {
        foreach (JournalLine line in after)
        {
            foreach (Edit edit in line.Edits())
            {
                database.Content.Apply(edit);
            }

            if (database.Content.Digest != line.Digest)
            {
                throw Mending.Undecided(new JournalFault.HoldsWrong(folder.Journal, line.Mark), journal);
            }
        }
    }

    // Said only where nothing else in the folder knows of more; what a backup knows is told at opening.
    private bool IsNothingLost() => BackupFiles.GoingOn(folder, end) is null && Witnesses.SnapshotBeyond(folder, end) is null;

    // One change ahead is what a program leaves that was ended between its two files: nothing to tell.
    private IEnumerable<StoreFault> Behind() => after.Length > 1
        ? [new MendingNote.CaughtUp(folder.Database, after.Length, IsNothingLost())]
        : [];

    // Gives the journal what it lacks and takes off what is not of it.
    private (ImmutableArray<JournalLine>? Lines, StoreFault[] Told) Whole()
    {
        if (journal.IsWhole && journal.Last?.Sha == end?.Sha)
        {
            return (null, []);
        }

        string? wanted = end?.Sha;
        string? damaged = journal.Length == 0 ? null : folder.Aside;
        ImmutableArray<JournalLine> lines = Joined(journal.Lines);
        if (lines.LastOrDefault()?.Sha == wanted && (lines.Length == 0 || lines[0].Of <= lines.Length))
        {
            return (lines, [lines.Length > journal.Lines.Length
                ? new MendingNote.JournalCompleted((journal.Last?.Number ?? 0) + 1, IsNothingLost())
                : new MendingNote.EndTakenOff(journal.Length - journal.SoundLength, folder.Aside)]);
        }

        lines = BackupFiles.Lines(folder).Select(Joined).FirstOrDefault(joined => joined.LastOrDefault()?.Sha == wanted);
        if (!lines.IsDefaultOrEmpty || end is null)
        {
            return (lines.IsDefault ? [] : lines, [new MendingNote.JournalJoined(Wrong, damaged)]);
        }

        if (BackupFiles.GoingOn(folder, end) is { } further)
        {
            throw Mending.Undecided(new DatabaseFault.EndsWith(folder.Database, end.Mark), journal, new Contradiction.GoesOn(new Witness.Backup(null), further.Number));
        }

        if (Witnesses.SnapshotBeyond(folder, end) is { } beyond)
        {
            throw Mending.Undecided(new DatabaseFault.EndsWith(folder.Database, end.Mark), journal, new Contradiction.GoesOn(new Witness.Snapshot(), beyond.Number));
        }

        return (
            JournalStart.Lines(database.Content, folder.Clock, end.Book == BookName.None ? BookName.New() : end.Book),
            [new MendingNote.JournalBegunAnew(Wrong, end.Mark, damaged)]);
    }

    // A beginning with the database's line and those after it, as far as each follows on.
    private ImmutableArray<JournalLine> Joined(ImmutableArray<JournalLine> beginning)
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
}
