using System.Drawing;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.FaultyScreen;

/// <summary>A screen with a fault wherever a screen can have one.</summary>
internal sealed class FaultyScreen : Screen
{
    private bool hasFaultyText;

    public override string Title => "Faulty";

    public override IReadOnlyList<Binding> Bindings =>
    [
        new(new Key('k'), "k", "key", "A fault of a key.", () => throw Fault()),
        new(new Key('d'), "d", "draw", "A fault as it is drawn.", SpoilText),
        new(new Key('e'), "e", "cell", "A fault as a cell is taken.", () => new Way.Edit(new CellEdit("Anything", "", _ => throw Fault()))),
    ];

    public override TextFrame Draw(Size size) => hasFaultyText
        ? throw Fault()
        : TextFrame.Of(size, [FrameLine.Of("Here is a fault behind each key.")], [], [KeyBar.Of(Bindings, size.Width)]);

    public override bool Pasted(string text) => throw Fault();

    public override CellEdit? Typing(string text) => throw Fault();

    private static InvalidOperationException Fault() => new("Nobody is to read this.");

    private Way SpoilText()
    {
        hasFaultyText = true;
        return Way.Stay;
    }
}
