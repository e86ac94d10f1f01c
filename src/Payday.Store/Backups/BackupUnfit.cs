using Payday.Store.Files;

namespace Payday.Store.Backups;

/// <summary>Why a file is no backup. One of the nested cases.</summary>
public abstract record BackupUnfit : StoreFault
{
    private BackupUnfit()
    {
    }

    /// <summary>It is no file.</summary>
    /// <param name="Kind">What it is.</param>
    public sealed record NoFile(FileKind Kind) : BackupUnfit;

    /// <summary>It is damaged.</summary>
    public sealed record Damaged : BackupUnfit;

    /// <summary>It is not there.</summary>
    public sealed record NotThere : BackupUnfit;

    /// <summary>It unpacks to more than a journal has, or to a line longer than any.</summary>
    /// <param name="Most">The most bytes of a journal.</param>
    public sealed record TooLarge(long Most) : BackupUnfit;
}
