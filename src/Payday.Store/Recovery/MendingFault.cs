using Payday.Store.Files;

namespace Payday.Store.Recovery;

/// <summary>Why a folder can't be mended without a person's choice; nothing was changed. One of the nested cases.</summary>
/// <param name="Reason">What is wrong.</param>
public abstract record MendingFault(StoreFault Reason) : StoreFault
{
    /// <inheritdoc/>
    internal override bool IsDamage => true;

    /// <summary>There is no journal, and there are backups.</summary>
    public sealed record NoJournal(StoreFault Reason) : MendingFault(Reason);

    /// <summary>The journal can't settle it.</summary>
    /// <param name="Reason">What is wrong.</param>
    /// <param name="SoundUpTo">How far the journal is sound; null where none of it can be read.</param>
    /// <param name="DamagedBytes">How many bytes of it are damaged after that; null where it is whole.</param>
    /// <param name="Against">What speaks against the journal; null where nothing else does.</param>
    public sealed record Undecided(StoreFault Reason, ChangeMark? SoundUpTo, long? DamagedBytes, Contradiction? Against) : MendingFault(Reason);
}
