using Payday.Screens.Shell;

namespace Payday.Commands;

/// <summary><c>payday</c> alone at a terminal: the full screen.</summary>
internal static class ScreensCommand
{
    public static Answer Open(Invocation call) => call.OnBook((store, book) =>
    {
        FullScreen.Run(store, book, call.Shell.Today());
        return new Answer.Done([], "{}");
    });
}
