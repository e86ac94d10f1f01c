using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens;

[Collection(OneTerminal.Name)]
public class RedrawTests
{
    [Fact]
    public void Resize_ThroughTooSmall_LeavesNothingStale()
    {
        using var terminal = new DemoTerminal();
        string[] before = [.. terminal.Open("withdrawal").Lines];
        terminal.Resize(40, 10);
        Assert.StartsWith("Payday needs 60 columns", terminal.Lines[0], StringComparison.Ordinal);
        terminal.Press(Key.CursorLeft).Resize(80, 24);
        Assert.Equal(before, terminal.Lines);
    }

    [Fact]
    public void Resize_WhileACellIsTyped_KeepsWhatIsTyped()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter).Type("23").Resize(1, 1).Resize(60, 20);
        Assert.EndsWith(": 23", terminal.TypedLine, StringComparison.Ordinal);
        terminal.Type("00").Press(Key.Enter);
        Assert.Contains("*2,300.00", terminal.Lines[4], StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_AfterThePotsAreOpenedAgain_CountsTheRowsBelowAsBefore()
    {
        using var terminal = new DemoTerminal();
        string[] before = [.. terminal.Open("pots").Lines];
        Assert.Equal(before, terminal.Press(Key.Esc, Key.Enter).Lines);
    }

    [Fact]
    public void Draw_WideAndCombiningText_LeavesNothingOfIt()
    {
        string[] wide = ["食費 家賃 電気", "e\u0301te\u0301 nai\u0308ve", "👩‍👩‍👧 family", "a食b食c", "한국어"];
        using var fresh = new DemoTerminal(first: _ => new Words(["plain", "text", "a", "ab", "abc"]));
        using var used = new DemoTerminal(first: _ => new Words(["plain", "text", "a", "ab", "abc"], wide));
        string[] before = [.. used.Lines];
        used.Press(Key.Tab);
        Assert.NotEqual(before, used.Lines);
        used.Press(Key.Tab);
        Assert.Equal(fresh.Lines, used.Lines);
    }

    /// <summary>Some lines, and some others after Tab.</summary>
    private sealed class Words(params string[][] texts) : PageScreen
    {
        private int turn;

        public override string Title => "Words";

        protected override IReadOnlyList<Binding> Keys => [new(Key.Tab, "Tab", "others", "The other lines.", Turn)];

        protected override IEnumerable<FrameLine> Lines(int width) => texts[turn].Select(text => FrameLine.Of(" " + text));

        private Way Turn()
        {
            turn = (turn + 1) % texts.Length;
            return Way.Stay;
        }
    }
}
