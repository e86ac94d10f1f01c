using Payday.Core.ClosedPaydays;
using Payday.Core.Undo;
using Payday.Screens.Shell;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Asking;

/// <summary>Where something can't be taken back yet: what comes first, and the key that leads straight there.</summary>
internal static class FirstBack
{
    /// <summary>Why it can't be, and what Enter leads to.</summary>
    public static string Text(BookSession session, Obstacle obstacle) => obstacle.First is not { } next ? UndoTexts.Of(obstacle, session.Style)
        : First(session, next) is var first && first == next ? $"{UndoTexts.Of(obstacle, session.Style)} Enter leads there."
        : $"{UndoTexts.Of(obstacle, session.Style)} First to be taken back is {UndoTexts.Name(first)}; Enter leads there.";

    /// <summary>The key; none where nothing that comes first helps.</summary>
    public static Binding[] Keys(BookSession session, Obstacle? obstacle) => obstacle?.First is { } next
        ? [new(Key.Enter, "Enter", "go there", "Go to what has to be taken back first.", () => new Way.Visit(new Goal.TakingBack(session, next)))]
        : [];

    private static BookEntry First(BookSession session, BookEntry next) => ComesFirst.Of(session.Book, next, session.Today);
}
