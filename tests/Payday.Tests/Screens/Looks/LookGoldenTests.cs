using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Routines;
using Payday.Screens.Leading;
using Payday.Screens.Watching;
using Payday.Tests.Slips;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens.Looks;

/// <summary>The demo household looked at, after its first payday was closed elsewhere.</summary>
[Collection(OneTerminal.Name)]
public class LookGoldenTests
{
    [Theory]
    [InlineData("home", 80, 24)]
    [InlineData("home", 60, 20)]
    [InlineData("refused", 80, 24, "Enter")]
    [InlineData("refused", 60, 20, "Enter")]
    [InlineData("ledger", 80, 24, "l")]
    [InlineData("ledger", 60, 20, "l")]
    [InlineData("filter", 80, 24, "l", "o")]
    [InlineData("calendar", 60, 20, "d")]
    [InlineData("history", 80, 24, "o", "Enter")]
    [InlineData("papers", 80, 24, "v")]
    [InlineData("help", 80, 24, "?")]
    [InlineData("free", 80, 24, "free", "Ctrl+R")]
    public void Look_AtASize_IsAsRecorded(string name, int width, int height, params string[] keys)
    {
        BookWatch? looking = null;
        OneLook? door = null;
        using var terminal = new DemoTerminal(
            width,
            height,
            first: session =>
            {
                session.Take(Closing.Of(Routine.Plan(session.Book, new RoutineDraft(Routine.Next(session.Book).Value)).Value!).Value!);
                door = new OneLook(() => session.Book);
                looking = new BookWatch(door, door.Peek(), () => session.Today);
                return ScreenMap.Home(looking);
            },
            standing: () => looking?.Standing ?? "");
        foreach (string key in keys)
        {
            if (key == "free")
            {
                door!.Holder = null;
            }
            else
            {
                terminal.Press(key switch { "Enter" => Key.Enter, "Ctrl+R" => Key.R.WithCtrl, _ => new Key(key[0]) });
            }
        }

        Golden.Equal($"{name}-{width}x{height}", terminal.Lines.Select(line => line.TrimEnd()));
    }
}
