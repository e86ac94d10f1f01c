using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Terminals;

/// <summary>The library's application, with the reading of the keyboard ours.</summary>
internal static class LibraryApplication
{
    public static IApplication Create(KeyboardInput keyboard) => (IApplication)With(new TerminalFactory(keyboard));

    // Terminal.Gui 2.5.0 has a constructor for components of another's making, but not for everybody to call; that it is there
    // is seen at the first start after a change of version.
    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object With(IComponentFactory components);
}
