using System.Collections.Immutable;
using Payday.Reports;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>Picks one of some things by its name.</summary>
/// <param name="title">What is picked.</param>
/// <param name="items">What there is to pick.</param>
/// <param name="now">What is picked now; the cursor begins there.</param>
/// <param name="pick">Takes what was picked, and leads on.</param>
internal sealed class PickScreen<T>(string title, ImmutableArray<PickItem<T>> items, T? now, Func<T, Way> pick) : CursorScreen
{
    private bool begun;

    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    protected override int Count => items.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => [new(Key.Enter, "Enter", "pick", "Pick what is under the cursor.", () => pick(items[Cursor].Value))];

    /// <summary>The question, where the title alone doesn't say it.</summary>
    public string Asked { get; init; } = "";

    /// <inheritdoc/>
    protected override string Detail => Asked;

    /// <inheritdoc/>
    protected override string Status => "A letter goes to the next name that begins with it.";

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        Cursor = NextName.From([.. items.Select(item => item.Name)], Cursor, text);
        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        if (!begun)
        {
            begun = true;
            Cursor = Math.Max(0, items.ToList().FindIndex(item => Equals(item.Value, now)));
        }

        return ([], new TextTable([Report.Names("Name"), new("")], [.. items.Select(item => ImmutableArray.Create(item.Name, item.Sort))], decimalMark: "").Lay(width).Rows);
    }
}

/// <summary>Something to pick.</summary>
/// <param name="Value">What is picked.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sort">What sort of thing it is; may be empty.</param>
internal sealed record PickItem<T>(T Value, string Name, string Sort);
