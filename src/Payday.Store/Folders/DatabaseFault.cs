using Payday.Store.Files;

namespace Payday.Store.Folders;

/// <summary>What is wrong with the database; where it comes as a refusal, nothing was changed. One of the nested cases.</summary>
/// <param name="Database">The database.</param>
public abstract record DatabaseFault(string Database) : StoreFault
{
    /// <inheritdoc/>
    internal override bool IsDamage => true;

    /// <summary>It is damaged.</summary>
    public sealed record Damaged(string Database) : DatabaseFault(Database);

    /// <summary>Its end is missing.</summary>
    public sealed record Cut(string Database) : DatabaseFault(Database);

    /// <summary>It is a sound one, but not of this program.</summary>
    public sealed record NotOurs(string Database) : DatabaseFault(Database);

    /// <summary>It is missing, and other files of its store are there.</summary>
    public sealed record Gone(string Database) : DatabaseFault(Database);

    /// <summary>It is missing.</summary>
    public sealed record Missing(string Database) : DatabaseFault(Database);

    /// <summary>It holds something else than was written to it.</summary>
    public sealed record HoldsSomethingElse(string Database) : DatabaseFault(Database);

    /// <summary>It can't be read.</summary>
    public sealed record Unreadable(string Database) : DatabaseFault(Database);

    /// <summary>It is a copy from before.</summary>
    public sealed record OldCopy(string Database) : DatabaseFault(Database);

    /// <summary>It is from before there was a journal, and one is beside it.</summary>
    /// <param name="Database">The database.</param>
    /// <param name="Version">Its version.</param>
    public sealed record FromBeforeTheJournal(string Database, int Version) : DatabaseFault(Database);

    /// <summary>It and the journal tell different things.</summary>
    /// <param name="Database">The database.</param>
    /// <param name="Last">Its last change; null where nothing is stored in it.</param>
    /// <param name="Journal">The journal.</param>
    public sealed record Contradicted(string Database, ChangeMark? Last, string Journal) : DatabaseFault(Database);

    /// <summary>It goes as far as a change, where something else goes on.</summary>
    /// <param name="Database">The database.</param>
    /// <param name="Last">Its last change.</param>
    public sealed record EndsWith(string Database, ChangeMark Last) : DatabaseFault(Database);
}
