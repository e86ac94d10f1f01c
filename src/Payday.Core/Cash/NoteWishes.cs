using Payday.Core.Amounts;

namespace Payday.Core.Cash;

/// <summary>Which notes a pot wants.</summary>
/// <param name="TopNote">The largest note it takes, or null for any.</param>
/// <param name="Small">The small money it wants in each part, or null.</param>
public sealed record NoteWishes(Money? TopNote = null, SmallMoney? Small = null)
{
    /// <summary>Any notes.</summary>
    public static NoteWishes None { get; } = new();
}

/// <summary>The least value wanted in notes up to a given one.</summary>
/// <param name="Note">The largest note that counts as small.</param>
/// <param name="AtLeast">The least value in such notes.</param>
public sealed record SmallMoney(Money Note, Money AtLeast);
