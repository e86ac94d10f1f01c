using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Receiving;

/// <summary>A wish of a pot that the notes received can't keep, so that its money can be kept.</summary>
/// <param name="Kind">Which wish.</param>
/// <param name="PotId">The pot.</param>
/// <param name="Pot">What the person calls it.</param>
/// <param name="Week">The fill day, or null for the whole period.</param>
/// <param name="Was">The top note, the small money wished for, or what the week was to get.</param>
/// <param name="Is">The largest note it gets, the small money it holds, or what the week gets.</param>
public sealed record WishGone(WishKind Kind, PotId PotId, string Pot, LocalDate? Week, Money Was, Money Is);

/// <summary>What a pot wishes of its notes.</summary>
public enum WishKind
{
    /// <summary>No note above its top note.</summary>
    TopNote,

    /// <summary>So much in small notes.</summary>
    SmallMoney,

    /// <summary>So much in each week.</summary>
    Week,
}
