using Payday.Screens.Shell;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>The keys that lead on and back while a household is set up for the first time.</summary>
internal static class GuideKeys
{
    /// <summary>The keys, or none where nobody is led.</summary>
    public static IReadOnlyList<Binding> Of(ISetupGuide? guide) => guide is null
        ? []
        :
        [
            new(Key.CursorLeft, "Left", "part before", $"Back to {guide.BeforeName}; everything is kept.", guide.Before),
            new(Key.CursorRight, "Right", "next part", $"On to the next part, {guide.NextName}; everything is kept, and this part can be taken up again.", guide.Next),
        ];
}
