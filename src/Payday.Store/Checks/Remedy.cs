namespace Payday.Store.Checks;

/// <summary>What will be done about a finding, or what to do. One of the nested cases.</summary>
public abstract record Remedy
{
    private Remedy()
    {
    }

    /// <summary>A person has to choose what to put back.</summary>
    public sealed record Choose : Remedy;

    /// <summary>Mending makes it good.</summary>
    /// <param name="Other">From what.</param>
    /// <param name="Aside">Where what is damaged is kept.</param>
    public sealed record Mend(CheckPart Other, string Aside) : Remedy;

    /// <summary>Mending makes the snapshot anew.</summary>
    public sealed record MakeAnew : Remedy;

    /// <summary>Mending takes it from others' eyes.</summary>
    public sealed record Close : Remedy;

    /// <summary>Only the one it belongs to can take it from others' eyes.</summary>
    public sealed record NotYours : Remedy;

    /// <summary>The database counts until it is understood.</summary>
    public sealed record KeepCopy : Remedy;

    /// <summary>Another backup is to be made.</summary>
    public sealed record MakeBackup : Remedy;

    /// <summary>A backup is to be put back.</summary>
    public sealed record GoBack : Remedy;

    /// <summary>The payday is to be reopened, or the pots corrected.</summary>
    public sealed record ReopenOrCount : Remedy;

    /// <summary>The next payday makes it good.</summary>
    public sealed record NextPayday : Remedy;

    /// <summary>Whether <c>payday check --mend</c> would do it.</summary>
    public bool IsMendable => this is Mend or MakeAnew or Close;
}
