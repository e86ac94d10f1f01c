using Payday.Store.Files;
using Payday.Store.Journals;

namespace Payday.Store.Recovery;

/// <summary>What was wrong with a folder and was mended, to be told. One of the nested cases.</summary>
public abstract record MendingNote : StoreFault
{
    private MendingNote()
    {
    }

    /// <summary>The database was made anew from the journal; nothing is lost.</summary>
    /// <param name="Reason">What was wrong with it.</param>
    /// <param name="UpTo">The last change of the journal.</param>
    /// <param name="Completing">The change that the journal lacked and has back from the database; null where it lacked none.</param>
    /// <param name="Aside">Where what was there is kept; null where nothing was.</param>
    public sealed record Rebuilt(StoreFault Reason, ChangeMark? UpTo, ChangeMark? Completing, string? Aside) : MendingNote;

    /// <summary>The database took changes from the journal.</summary>
    /// <param name="Database">The database.</param>
    /// <param name="Changes">How many, at least two.</param>
    /// <param name="IsNothingLost">Whether nothing in the folder knows of more.</param>
    public sealed record CaughtUp(string Database, int Changes, bool IsNothingLost) : MendingNote;

    /// <summary>The journal has changes back from the database.</summary>
    /// <param name="First">The number of the first of them.</param>
    /// <param name="IsNothingLost">Whether nothing in the folder knows of more.</param>
    public sealed record JournalCompleted(long First, bool IsNothingLost) : MendingNote;

    /// <summary>Bytes that are no confirmed change were taken off the journal's end.</summary>
    /// <param name="Bytes">How many.</param>
    /// <param name="Aside">Where a copy is kept.</param>
    public sealed record EndTakenOff(long Bytes, string Aside) : MendingNote;

    /// <summary>The journal's lines are back from a backup and the database.</summary>
    /// <param name="Reason">What was wrong with it.</param>
    /// <param name="Aside">Where the damaged one is kept; null where there was none.</param>
    public sealed record JournalJoined(JournalFault Reason, string? Aside) : MendingNote;

    /// <summary>The journal begins anew with all that the database holds; nothing is lost.</summary>
    /// <param name="Reason">What was wrong with it.</param>
    /// <param name="UpTo">The last change that the database has.</param>
    /// <param name="Aside">Where the damaged one is kept; null where there was none.</param>
    public sealed record JournalBegunAnew(JournalFault Reason, ChangeMark UpTo, string? Aside) : MendingNote;

    /// <summary>A store of an old version is one of this version now.</summary>
    /// <param name="From">The version that it was of.</param>
    /// <param name="To">The version that it is of.</param>
    /// <param name="Copy">The copy from before.</param>
    public sealed record BroughtOver(int From, int To, string Copy) : MendingNote;

    /// <summary>A backup goes on from what is stored, so that it may be an old copy.</summary>
    /// <param name="Further">How far the backup goes.</param>
    /// <param name="Last">The last change that is stored; null where there is none.</param>
    public sealed record MaybeOldCopy(long Further, ChangeMark? Last) : MendingNote;
}
