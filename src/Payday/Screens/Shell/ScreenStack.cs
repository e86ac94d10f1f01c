namespace Payday.Screens.Shell;

/// <summary>The screens that lie on one another, and where a key leads among them.</summary>
internal sealed class ScreenStack
{
    private readonly Stack<Screen> screens = new();

    private readonly Func<Goal, Way> lead;

    /// <param name="first">The screen at the bottom.</param>
    /// <param name="lead">Says which screen a goal is.</param>
    public ScreenStack(Screen first, Func<Goal, Way> lead)
    {
        screens.Push(first);
        this.lead = lead;
    }

    /// <summary>The screen in view.</summary>
    public Screen Top => screens.Peek();

    /// <summary>The screen at the bottom, which all the others were reached from.</summary>
    public Screen First => screens.Last();

    /// <summary>Follows a way.</summary>
    /// <returns>False where it leads out of the program.</returns>
    public bool Follow(Way way)
    {
        switch (way)
        {
            case Way.Visit visit:
                return Follow(lead(visit.Goal));
            case Way.Says says:
                Top.Message = says.Message;
                break;
            case Way.To to:
                screens.Push(to.Screen);
                break;
            case Way.Instead instead:
                screens.Pop();
                screens.Push(instead.Screen);
                break;
            case Way.Afresh afresh:
                screens.Clear();
                screens.Push(afresh.Screen);
                break;
            case Way.Goes when screens.Count > 1:
                screens.Pop();
                break;
            case Way.Done done when screens.Count > 1:
                screens.Pop();
                Top.News = done.Message;
                break;
            case Way.Goes or Way.Done or Way.Quits:
                return false;
            case Way.Home home:
                while (screens.Count > 1)
                {
                    screens.Pop();
                }

                Top.ToTop();
                Top.News = home.Message;
                break;
        }

        return true;
    }
}
