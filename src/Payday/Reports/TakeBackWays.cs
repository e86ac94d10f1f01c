using Payday.Core.Books;
using Payday.Core.Undo;

namespace Payday.Reports;

/// <summary>What leads to taking something back, for where it is in the way of something else.</summary>
internal static class TakeBackWays
{
    /// <summary>An obstacle with the keys that lead to it.</summary>
    public static string WithKeys(Obstacle obstacle) => Together(obstacle, obstacle.Kind switch
    {
        ObstacleKind.Count => "On home: w, then u.",
        ObstacleKind.Fill => "On home: f, then u on that fill.",
        ObstacleKind.Purchase => "On home: b, then u on it.",
        ObstacleKind.Return => "On home: r, then u.",
        ObstacleKind.Difference => "On home: w, then g, then u.",
        ObstacleKind.Payday => "On home: l, then z.",
        ObstacleKind.Movement => "On home: l, then u on it.",
        _ => "",
    });

    /// <summary>An obstacle with the command that leads to it, or the keys where there is none.</summary>
    public static string WithCommands(Book book, Obstacle obstacle)
    {
        string pot = obstacle.PotId is { } id ? " \"" + WeekText.PotName(book, id) + "\"" : "";
        return Together(obstacle, obstacle.Kind switch
        {
            ObstacleKind.Count => $"payday count --undo{pot}",
            ObstacleKind.Fill => $"payday fill --undo{pot}",
            ObstacleKind.Purchase => "payday spend --undo NUMBER",
            ObstacleKind.Return => "payday return --undo",
            ObstacleKind.Difference => "On the screen: w, then g, then u.",
            ObstacleKind.Payday => "On the screen: l, then z.",
            ObstacleKind.Movement => "On the screen: l, then u on it.",
            _ => "",
        });
    }

    private static string Together(Obstacle obstacle, string way) => way.Length == 0 ? obstacle.Sentence : $"{obstacle.Sentence} {way}";
}
