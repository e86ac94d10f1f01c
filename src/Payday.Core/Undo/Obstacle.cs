using Payday.Core.Ids;

namespace Payday.Core.Undo;

/// <summary>What has to be taken back before something else can be.</summary>
/// <param name="Kind">What it is, so that a screen or a command can say what leads to it.</param>
/// <param name="Sentence">One sentence: what is in the way, and what to do.</param>
/// <param name="PotId">The pot whose count or fill it is; null for anything else.</param>
public sealed record Obstacle(ObstacleKind Kind, string Sentence, PotId? PotId = null);

/// <summary>What can be in the way of taking something back.</summary>
public enum ObstacleKind
{
    /// <summary>Nothing that can be taken back: the person named what there isn't, or what is undone already.</summary>
    None,

    /// <summary>A confirmed count.</summary>
    Count,

    /// <summary>A fill of the wallet.</summary>
    Fill,

    /// <summary>A card purchase.</summary>
    Purchase,

    /// <summary>A cash return.</summary>
    Return,

    /// <summary>A difference that was cleared up.</summary>
    Difference,

    /// <summary>A closed payday.</summary>
    Payday,

    /// <summary>A movement that is undone in the ledger.</summary>
    Movement,
}
