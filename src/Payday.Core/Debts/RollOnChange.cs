using Payday.Core.Ids;

namespace Payday.Core.Debts;

/// <summary>Why a debt ends sooner or later in one course than in another, where nothing else is paid on it itself.</summary>
/// <param name="From">The debt whose money makes the difference once it has ended.</param>
/// <param name="Comes">How it comes to the other one.</param>
public sealed record RollOnChange(DebtId From, RollOnComes Comes);

/// <summary>How the money of a debt that ended comes to another, against before.</summary>
public enum RollOnComes
{
    /// <summary>In a later month.</summary>
    Later,

    /// <summary>In an earlier month.</summary>
    Sooner,

    /// <summary>Not at all any more.</summary>
    NoMore,

    /// <summary>As well, where nothing of it came before.</summary>
    AsWell,

    /// <summary>Less of it.</summary>
    Less,

    /// <summary>More of it.</summary>
    More,
}
