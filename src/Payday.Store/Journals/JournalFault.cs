using Payday.Store.Files;

namespace Payday.Store.Journals;

/// <summary>What is wrong with a journal, or why a change can't go into it. One of the nested cases.</summary>
public abstract record JournalFault : StoreFault
{
    private JournalFault()
    {
    }

    /// <summary>A newer version of the program wrote it; nothing was changed.</summary>
    public sealed record Newer : JournalFault;

    /// <summary>In its place is something that is no file; nothing was changed.</summary>
    /// <param name="Path">The journal.</param>
    /// <param name="Kind">What it is.</param>
    public sealed record NoFile(string Path, FileKind Kind) : JournalFault
    {
        internal override bool IsDamage => true;
    }

    /// <summary>It is larger than any that is read; nothing was changed.</summary>
    /// <param name="Path">The journal.</param>
    /// <param name="Bytes">How large it is.</param>
    /// <param name="Most">The most bytes that are read.</param>
    public sealed record TooLarge(string Path, long Bytes, long Most) : JournalFault
    {
        internal override bool IsDamage => true;
    }

    /// <summary>It may not grow further; nothing was changed.</summary>
    /// <param name="Path">The journal.</param>
    public sealed record Full(string Path) : JournalFault;

    /// <summary>A change is too large to be stored at once; nothing was changed.</summary>
    /// <param name="Bytes">How large it is.</param>
    /// <param name="Most">The most bytes of one.</param>
    public sealed record ChangeTooLarge(long Bytes, long Most) : JournalFault;

    /// <summary>It was missing.</summary>
    public sealed record Missing : JournalFault;

    /// <summary>It was damaged.</summary>
    /// <param name="After">The last change before the damage; null where it was damaged from its beginning.</param>
    public sealed record DamagedAfter(ChangeMark? After) : JournalFault;

    /// <summary>Its lines are whole, but the documents don't come to what one of them says.</summary>
    /// <param name="Line">The first such line; null where they can't be done at all.</param>
    public sealed record ComesToSomethingElse(ChangeMark? Line) : JournalFault;

    /// <summary>It holds a change, and the documents don't come to what that says.</summary>
    /// <param name="Path">The journal.</param>
    /// <param name="Line">The change.</param>
    public sealed record HoldsWrong(string Path, ChangeMark Line) : JournalFault;
}
