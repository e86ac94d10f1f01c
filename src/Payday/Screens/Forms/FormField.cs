using System.Collections.Immutable;
using Payday.Screens.Shell;

namespace Payday.Screens.Forms;

/// <summary>A field of a form that is kept: its text is all that it holds, and what that means is read from it anew each time.</summary>
/// <param name="Name">The name under which its text is kept: the same in every version.</param>
/// <param name="Label">What the screen calls it, in a word or three.</param>
/// <param name="Help">What it is for, in a sentence or two.</param>
internal sealed record FormField(string Name, string Label, string Help)
{
    /// <summary>What stands there while nothing was typed; empty for nothing.</summary>
    public string Usual { get; init; } = "";

    /// <summary>What can be picked, each by the text that is kept for it; empty where something is typed.</summary>
    public ImmutableArray<PickItem<string>> Picks { get; init; } = [];

    /// <summary>What is wrong with a text that was typed; null for nothing.</summary>
    public Func<string, string?> Fault { get; init; } = _ => null;

    /// <summary>What is kept of a text that was typed and is right: a day by its date, whatever it was called.</summary>
    public Func<string, string> Keep { get; init; } = text => text;

    /// <summary>How a text shows.</summary>
    public Func<string, string> Show { get; init; } = text => text;

    /// <summary>Where Enter leads instead, e.g. to count notes by value; null where it types or picks.</summary>
    public Func<Way>? Leads { get; init; }

    /// <summary>How many characters can be typed.</summary>
    public int Most { get; init; } = CellEdit.Usual;
}
