using System.Collections.Immutable;
using Humanizer;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;

namespace Payday.Screens.Setup;

/// <summary>A part of the household, as the screen of all parts lists it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Help">What it is for.</param>
/// <param name="Holds">What it has, in a few words.</param>
/// <param name="Open">Its screen, with where Right leads.</param>
internal sealed record SetupPart(string Name, string Help, Func<string> Holds, Func<ISetupGuide?, Screen> Open)
{
    private const int NamesShown = 3;

    /// <summary>A list.</summary>
    public static SetupPart Of(SetupWork work, SetupList list, string? name = null) => new(
        name ?? list.Title,
        list.Help,
        () => Names(work, list),
        guide => list.Lines(work.Begun).IsEmpty || guide is null ? new ListScreen(work, list, guide) : new LinesScreen(work, list, guide));

    /// <summary>Fields of the household itself.</summary>
    /// <param name="work">The household.</param>
    /// <param name="name">What the part is called.</param>
    /// <param name="help">What it is for.</param>
    /// <param name="fields">The fields.</param>
    /// <param name="shown">Which of them say what it has.</param>
    public static SetupPart Of(
        SetupWork work, string name, string help, Func<ImmutableArray<SetupField<HouseholdDraft>>> fields, params int[] shown) => new(
        name,
        help,
        () => string.Join(", ", shown
            .Select(index => fields()[index])
            .Select(field => field.Show(work.Draft, work))
            .Where(text => text.Length > 0)),
        guide => new FormScreen(work, new HouseholdForm(work, fields()), name, guide));

    private static string Names(SetupWork work, SetupList list)
    {
        string[] names = [.. list.Ordered(work.Draft).Select(row => row.Item.Name!)];
        string known = names.Length == 0 ? "none yet"
            : $"{names.Length}: {string.Join("; ", names.Take(NamesShown))}{(names.Length > NamesShown ? "; ..." : "")}";
        int lines = list.Lines(work.Begun).Length;
        known += lines > 0 ? $", {"line".ToQuantity(lines)} to take" : "";
        return list.Begun(work.Begun) is null ? known : known + ", one begun";
    }
}
