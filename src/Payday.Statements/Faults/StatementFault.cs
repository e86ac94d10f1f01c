namespace Payday.Statements.Faults;

/// <summary>What is wrong, or was noticed, and where: a value, which <see cref="FaultTexts"/> puts into words.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Line">The line of the file, from 1; 0 where it is of the file as a whole.</param>
/// <param name="Found">What stands there, cleaned and cut; see <see cref="FaultKind"/>.</param>
/// <param name="Wanted">What should stand there, or was taken; see <see cref="FaultKind"/>.</param>
public sealed record StatementFault(FaultKind Kind, int Line, string Found = "", string Wanted = "")
{
    /// <summary>Whether it is only told: all that the file has was read all the same.</summary>
    public bool IsNotice => Kind is FaultKind.DateReplaced or FaultKind.NoSuchDay or FaultKind.BalanceUnusable or FaultKind.IdTwice
        or FaultKind.SignsTurned or FaultKind.PartsDiffer or FaultKind.NotClosed or FaultKind.CountDiffers or FaultKind.CutOff;
}
