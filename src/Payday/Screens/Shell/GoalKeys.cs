namespace Payday.Screens.Shell;

/// <summary>Keys that lead to the same goal from several screens.</summary>
internal static class GoalKeys
{
    /// <summary>The key that reopens the last closed payday, after a question.</summary>
    public static Binding Reopens(this BookSession session, Screen on) => session.Changing(on, Letters.Reopen.Does(
        "reopen", "Take the last closed payday up again, as long as nothing later depends on it.", () => new Way.Visit(new Goal.Reopening(session))));
}
