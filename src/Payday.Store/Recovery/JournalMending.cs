using System.Collections.Immutable;
using System.Globalization;
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
    private readonly ImmutableArray<string> told = [];

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
            throw Mending.Undecided(
                folder, $"{folder.Database} ({database.Last?.ToString() ?? "nothing stored"}) and {folder.Journal} tell different things.", journal);
        }

        Foresee();
        string[] behind = [.. Behind()];
        (whole, string[] mended) = Whole();
        told = [.. behind, .. mended];
        end = whole is { } lines ? lines.LastOrDefault() : end;
    }

    /// <inheritdoc/>
    public ImmutableArray<string> Do()
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
                throw Mending.Undecided(folder, $"{folder.Journal} holds {line}, which doesn't come to what it says.", journal);
            }
        }
    }

    // Said only where nothing else in the folder knows of more; what a backup knows is told at opening.
    private string NothingLost() => BackupFiles.GoingOn(folder, end) is null && Witnesses.SnapshotBeyond(folder, end) is null ? "; nothing is lost." : ".";

    // One change ahead is what a program leaves that was ended between its two files: nothing to tell.
    private IEnumerable<string> Behind() => after.Length > 1
        ? [string.Create(CultureInfo.InvariantCulture, $"{folder.Database} was {after.Length} changes behind the journal and has taken them from there{NothingLost()}")]
        : [];

    // Gives the journal what it lacks and takes off what is not of it.
    private (ImmutableArray<JournalLine>? Lines, string[] Told) Whole()
    {
        if (journal.IsWhole && journal.Last?.Sha == end?.Sha)
        {
            return (null, []);
        }

        string? wanted = end?.Sha;
        string damaged = journal.Length == 0 ? "" : $" The damaged one is kept in {folder.Aside}.";
        ImmutableArray<JournalLine> lines = Joined(journal.Lines);
        if (lines.LastOrDefault()?.Sha == wanted && (lines.Length == 0 || lines[0].Of <= lines.Length))
        {
            return (lines, [lines.Length > journal.Lines.Length
                ? $"The journal lacked change {(journal.Last?.Number ?? 0) + 1} and what comes after, and has it back from the database{NothingLost()}"
                : $"The journal ended in {journal.Length - journal.SoundLength} bytes that are no confirmed change, as after a power cut; they were taken off, and all that was confirmed is there. A copy is kept in {folder.Aside}."]);
        }

        lines = BackupFiles.Lines(folder).Select(Joined).FirstOrDefault(joined => joined.LastOrDefault()?.Sha == wanted);
        if (!lines.IsDefaultOrEmpty || end is null)
        {
            return (lines.IsDefault ? [] : lines, [$"{Wrong} Its lines are back from a backup and the database.{damaged}"]);
        }

        if (BackupFiles.GoingOn(folder, end) is { } further)
        {
            throw Mending.Undecided(folder, $"{folder.Database} ends with {end}.", journal, $" A backup goes on to change {further.Number}.");
        }

        if (Witnesses.SnapshotBeyond(folder, end) is { } beyond)
        {
            throw Mending.Undecided(folder, $"{folder.Database} ends with {end}.", journal, string.Create(CultureInfo.InvariantCulture, $" The snapshot goes on to change {beyond.Number}."));
        }

        return (
            JournalStart.Lines(database.Content, folder.Clock, end.Book == BookName.None ? BookName.New() : end.Book),
            [$"{Wrong} It begins anew with all that the database holds, up to {end}; nothing is lost.{damaged}"]);
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
