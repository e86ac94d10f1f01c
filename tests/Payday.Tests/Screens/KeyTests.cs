using Payday.Screens.Home;
using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.Tests.Screens;

[Collection(OneTerminal.Name)]
public class KeyTests
{
    // Pressing it would print on the printer of whoever runs the tests.
    private const string Prints = "Ctrl+P print";

    public static TheoryData<string> Names => ScreenGoldenTests.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void BottomLine_EachKeyNamed_Works(string name)
    {
        string[] named;
        using (var terminal = new DemoTerminal())
        {
            named = terminal.Open(name).BottomLine.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        }

        Assert.NotEmpty(named);
        foreach (string key in named.Where(key => key != Prints))
        {
            using var terminal = new DemoTerminal();
            Binding binding = Assert.Single(terminal.Open(name).Top.Bindings, known => $"{known.Name} {known.Label}" == key);
            string before = Shown(terminal);
            terminal.Press(binding.Key);
            Assert.True(binding.Key == Key.Space || Shown(terminal) != before || binding.Label is "leave" or "all proposed" or "proposal", $"{name}: {key} does nothing to be seen");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bindings_OfAScreen_ShareNoKeyAndHaveEsc(string name)
    {
        using var terminal = new DemoTerminal();
        IReadOnlyList<Binding> bindings = terminal.Open(name).Top.Bindings;
        Assert.Distinct(bindings.Select(binding => binding.Key.ToString()));
        Assert.Contains(bindings, binding => binding.Key == Key.Esc);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Esc_PressedOftenEnough_AsksWhetherToLeave(string name)
    {
        using var terminal = new DemoTerminal();
        terminal.Open(name);
        for (int i = 0; i < 5 && terminal.Top is not LeaveScreen; i++)
        {
            terminal.Press(Key.Esc);
        }

        Assert.IsType<LeaveScreen>(terminal.Top);
    }

    [Fact]
    public void CtrlC_WhileACellIsTyped_AsksWhetherToLeave()
    {
        using var terminal = new DemoTerminal();
        terminal.Open("income").Press(Key.Enter, Key.C.WithCtrl);
        Assert.IsType<LeaveScreen>(terminal.Top);
    }

    [Fact]
    public void CtrlC_InTheMiddleOfTheDemo_SaysThatItIsThrownAway()
    {
        using var terminal = new DemoTerminal(first: session =>
        {
            session.IsThrownAway = true;
            return new HomeScreen(session);
        });
        terminal.Open("income").Press(Key.C.WithCtrl);
        Assert.Contains("thrown away", Shown(terminal), StringComparison.Ordinal);
    }

    private static string Shown(DemoTerminal terminal) => string.Join('\n', terminal.Lines);
}
