using Payday.Printing;
using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.Screens.Papers;

/// <summary>The key for the size of print.</summary>
internal static class PrintKeys
{
    /// <summary>Turns from one size to the other; the key names the one that it turns to.</summary>
    public static Binding Size(PrintSize now, Action<PrintSize> turn)
    {
        PrintSize next = now == PrintSize.Large ? PrintSize.Usual : PrintSize.Large;
        return new Binding(Key.Space, "Space", next == PrintSize.Large ? "large print" : "usual print", "The size of print on paper and in PDF files: usual, or large, of 16 points and more.", () =>
        {
            turn(next);
            return Way.Stay;
        });
    }
}
