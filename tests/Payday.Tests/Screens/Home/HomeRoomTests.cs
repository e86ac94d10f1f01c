using System.Drawing;
using Payday.Screens.Home;
using Payday.Tests.Screens.Setup;

namespace Payday.Tests.Screens.Home;

/// <summary>Home where there is little room: what doesn't show is said to be below, whatever is said above the keys.</summary>
public sealed class HomeRoomTests : IDisposable
{
    private readonly DemoBook demo = new();

    public static TheoryData<int, int, bool, string> Rooms
    {
        get
        {
            var rooms = new TheoryData<int, int, bool, string>();
            foreach (bool closed in new[] { false, true })
            {
                foreach (string message in new[] { "", "3 pots counted, 23.00 spent.", string.Concat(Enumerable.Repeat("A sentence that is longer than its line. ", 4)) })
                {
                    rooms.AddRange((60, 20, closed, message), (80, 24, closed, message), (132, 40, closed, message));
                    for (int height = 21; height < 40; height += 3)
                    {
                        rooms.Add(80, height, closed, message);
                    }
                }
            }

            return rooms;
        }
    }

    public void Dispose() => demo.Dispose();

    [Theory]
    [MemberData(nameof(Rooms))]
    public void Home_InAnyRoom_CountsWhatIsBelow_AndLeadsToAllOfIt(int width, int height, bool closed, string message)
    {
        if (closed)
        {
            demo.CloseOne();
        }

        var size = new Size(width, height);
        var screen = new HomeScreen(demo.Session) { Message = message };
        string[] all = Page(new HomeScreen(demo.Session), new Size(width, 200));
        int last = Array.FindLastIndex(all, line => line.Length > 0) + 1;

        string[] seen = [.. screen.Draw(size).Lines.Select(line => line.Text.TrimEnd())];
        int shown = all.Take(last).TakeWhile((line, i) => i < seen.Length && seen[i] == line).Count();
        if (shown < last)
        {
            Assert.Contains(seen, line => line.StartsWith($" {last - shown} more line", StringComparison.Ordinal));
        }

        // Each due and each debt can be reached.
        var reached = new HashSet<string>(seen);
        for (int i = 0; i < last; i++)
        {
            screen.Bindings.Single(key => key.Name == "Down").Do();
            reached.UnionWith(screen.Draw(size).Lines.Select(line => line.Text.TrimEnd()));
        }

        Assert.Empty(all.Take(last).Where(line => !line.Contains("The account over the next", StringComparison.Ordinal)).Except(reached));
    }

    private static string[] Page(HomeScreen screen, Size size) => [.. screen.Draw(size).Lines.SkipLast(1).Select(line => line.Text.TrimEnd()).TakeWhile(line => !line.Contains("The account over the next", StringComparison.Ordinal))];
}
