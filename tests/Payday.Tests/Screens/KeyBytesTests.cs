using System.Text;
using Payday.Screens.Terminals;
using Payday.Tests.Screens.Terminals;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens;

/// <summary>What keys send to a terminal of 80x24, and that it then shows the screen.</summary>
[Collection(OneTerminal.Name)]
public class KeyBytesTests
{
    // Over a slow line of 9,600 bits a second a key within a screen is there after a third of a second, and a step after two.
    private const int MostWithin = 300;
    private const int MostStep = 2000;

    public static TheoryData<string> Screens => ["home", "calendar", "debts-ahead", "outlook", "bills-ahead", "count", "household", "ledger", "income", "bills", "debts", "pots", "surplus", "withdrawal", "slip", "papers", "help"];

    [Theory]
    [MemberData(nameof(Screens))]
    public void DownAndUp_AScreen_SendsFewBytes(string name)
    {
        using var sent = new Watched();
        sent.Press(MostStep, DemoTerminal.Way(name));
        sent.Press(MostWithin, [.. Enumerable.Repeat(Key.CursorDown, 8), .. Enumerable.Repeat(Key.CursorUp, 8)]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(9)]
    public void AnAmount_OfAPot_SendsFewBytes(int row)
    {
        using var sent = new Watched();
        sent.Press(MostStep, [.. DemoTerminal.Way("pots"), .. Enumerable.Repeat(Key.CursorDown, row)]);
        sent.Press(MostWithin, Key.Enter, new Key('1'), new Key('2'), Key.Enter, Key.Space);
    }

    private sealed class Watched : IDisposable
    {
        private readonly DemoTerminal demo = new();
        private readonly LeanFrames frames = new();
        private readonly EmulatedTerminal terminal = new(24, 80);

        public Watched() => Show(int.MaxValue, "the first screen");

        public void Dispose() => demo.Dispose();

        public void Press(int most, params Key[] keys)
        {
            foreach (Key key in keys)
            {
                demo.Press(key);
                Show(most, key.ToString());
            }
        }

        private void Show(int most, string key)
        {
            ShownCell[][] wanted = ShownCell.Of(demo.Held);
            string sent = frames.Next(wanted);
            terminal.Take(sent);
            Assert.Equal(EmulatedTerminal.RowsOf(wanted), terminal.Rows);
            int bytes = Encoding.UTF8.GetByteCount(sent);
            Assert.True(bytes <= most, $"{key} on {demo.Top.Title} sends {bytes} bytes:\n{sent.Replace("\e", "ESC", StringComparison.Ordinal)}");
        }
    }
}
