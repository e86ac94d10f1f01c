using Payday.Core.Households;
using Payday.Screens.Frames;
using Terminal.Gui.Drivers;

namespace Payday.Screens.Shell;

/// <summary>How screens look on this terminal: as the household chose, on the background that the terminal says it has.</summary>
/// <remarks>The terminal may say its background late, or never; a household may choose another look at any time.</remarks>
/// <param name="look">The look that is drawn with.</param>
/// <param name="field">The text field, which has colours of its own.</param>
/// <param name="redraw">Has all drawn anew.</param>
internal sealed class TerminalLook(Look look, CellField field, Action redraw)
{
    private IDriver? driver;

    /// <summary>Takes up what is known now.</summary>
    /// <param name="known">The terminal; null while there is none.</param>
    /// <param name="chosen">What the household chose.</param>
    public void Take(IDriver? known, ScreenLook chosen)
    {
        if (driver is null && known is not null)
        {
            driver = known;
            driver.DefaultAttributeChanged += (_, _) => redraw();
        }

        (ScreenLook, Background) before = (look.Chosen, look.Background);
        look.Chosen = chosen;
        look.Background = driver?.DefaultAttribute is { } own ? Contrast.Of(own.Background) : Background.Unknown;
        if (before != (look.Chosen, look.Background))
        {
            field.Show(look);
        }
    }
}
