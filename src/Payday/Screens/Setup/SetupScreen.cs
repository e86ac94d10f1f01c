using System.Collections.Immutable;
using Payday.Reports;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Setup;

/// <summary>All parts of a household: its settings and its lists.</summary>
/// <param name="work">The household.</param>
/// <param name="statements">The screen that finds bills, pay and new amounts in bank statements; null for none.</param>
internal sealed class SetupScreen(SetupWork work, Func<Screen>? statements = null) : CursorScreen
{
    private readonly ImmutableArray<SetupPart> parts =
    [
        SetupPart.Of(work, "Settings", "Name, notes and coins, fill day, bank and habits.", () => HouseholdFields.All, 0, 1),
        .. SetupList.All.Select(list => SetupPart.Of(work, list)),
        SetupPart.Of(work, "Opening balances", "What was in the account and at home when the household began.", () => HouseholdFields.Opening(work), 0, 1),
    ];

    /// <inheritdoc/>
    public override string Title => "Household";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.All;

    /// <inheritdoc/>
    protected override int Count => parts.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        new(Key.Enter, "Enter", "open", "This part of the household.", () => new Way.To(parts[Cursor].Open(null))),
        .. statements is null
            ? Array.Empty<Binding>()
            : [Letters.List.Does("from statements", "Find bills, pay and new amounts in bank statements, and take them line by line.", () => new Way.To(statements()))],
    ];

    /// <inheritdoc/>
    protected override string Detail => parts[Cursor].Help;

    /// <inheritdoc/>
    protected override string Status => "Changes are stored as they are made; closed paydays stay as they are.";

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new(""), Report.Names("") with { Grows = true }],
            [.. parts.Select(part => ImmutableArray.Create(part.Name, CleanText.OneLine(part.Holds())))],
            [],
            decimalMark: "").Lay(width);
        return ([], lines.Rows);
    }
}
