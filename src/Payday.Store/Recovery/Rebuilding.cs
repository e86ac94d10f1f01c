using System.Collections.Immutable;
using Payday.Store.Contents;
using Payday.Store.Databases;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>Makes the database anew from the journal, where all that is there bears the journal out.</summary>
internal sealed class Rebuilding : IMending
{
    private readonly StoreFolder folder;
    private readonly StoreFault reason;
    private readonly JournalScan journal;
    private readonly JournalLine? completing;
    private readonly BookContent content;

    /// <param name="folder">The folder.</param>
    /// <param name="journal">Its journal.</param>
    /// <param name="reason">What is wrong with the database.</param>
    /// <param name="known">The last line that the database had, where that can still be read of it.</param>
    /// <exception cref="StoreException">The journal is not whole, or something else in the folder knows better.</exception>
    public Rebuilding(StoreFolder folder, JournalScan journal, StoreFault reason, JournalLine? known = null)
    {
        (this.folder, this.journal, this.reason) = (folder, journal, reason);
        if (journal.Length == 0)
        {
            throw new StoreException(new MendingFault.NoJournal(reason));
        }

        if (!journal.IsWhole)
        {
            throw Mending.Undecided(reason, journal);
        }

        completing = known?.Follows(journal.Last) == true ? known : null;
        try
        {
            content = Content();
        }
        catch (Exception fault) when (StoreFaults.IsDamage(fault))
        {
            throw Mending.Undecided(reason, journal);
        }

        if (new Witnesses(folder, Lines).Against(completing is null ? known : null) is { } other)
        {
            throw Mending.Undecided(reason, journal, other);
        }
    }

    // The last change may be missing from the end of the journal, and still be where the database keeps it.
    private ImmutableArray<JournalLine> Lines => completing is null ? journal.Lines : journal.Lines.Add(completing);

    /// <inheritdoc/>
    public ImmutableArray<StoreFault> Do()
    {
        if (completing is not null)
        {
            AsideFiles.CopyJournal(folder);
            JournalStart.Write(folder, Lines);
        }

        string? kept = AsideFiles.MoveDatabase(folder) ? folder.Aside : null;
        BookDatabase.Create(folder, content, Lines.Last());
        return [new MendingNote.Rebuilt(reason, journal.Last?.Mark, completing?.Mark, kept)];
    }

    private BookContent Content()
    {
        BookContent read = journal.Content();
        foreach (Edit edit in completing?.Edits() ?? [])
        {
            read.Apply(edit);
        }

        return completing is null || read.Digest == completing.Digest
            ? read
            : throw new JournalLineException(completing.Mark);
    }
}
