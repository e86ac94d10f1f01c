using Humanizer;
using Payday.Core.Households;
using Payday.Files;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Start;

/// <summary>Takes a household file: its path, then what it holds or what is wrong with it.</summary>
internal sealed class TakeFileScreen(StartDoor door) : PageScreen
{
    private string path = "";
    private HouseholdOffer? offer;

    /// <inheritdoc/>
    public override string Title => "Take a household file";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys => offer?.Household is { } household
        ? [new(Key.Enter, "Enter", "take it", "Store this household here.", () => Take(household)), Other("Ctrl+F")]
        : [Other("Enter")];

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Lines(int width)
    {
        string[] lines = offer switch
        {
            null => ["No file yet: Enter asks for its path, such as ~/household.json."],
            { Household: { } household } =>
            [
                CleanText.OneLine($"{household.Name}, in {household.Currency}, from {DateText.Long(household.Start)}."),
                $"{"income source".ToQuantity(household.Sources.Length)}, {"bill".ToQuantity(household.Bills.Length)}, {"debt".ToQuantity(household.Debts.Length)}, {"pot".ToQuantity(household.Pots.Length)}.",
                "",
                "Enter takes it.",
            ],
            _ =>
            [
                $"{"thing".ToQuantity(offer.Faults.Length)} to mend in the file; then Enter reads it again.",
                "",
                .. offer.Faults.Select(fault => "! " + CleanText.OneLine(fault)),
            ],
        };
        return lines.SelectMany(line => line.Length == 0 ? [""] : TextWrap.Lines(line, width - 2)).Select(line => FrameLine.Of(" " + line));
    }

    private Binding Other(string name) => new(
        name == "Ctrl+F" ? Key.F.WithCtrl : Key.Enter, name, name == "Ctrl+F" ? "another file" : "path", "The path of the household file.",
        () => new Way.Edit(new CellEdit("Path of the file", path, Read) { Most = CellEdit.Long }));

    private string? Read(string text)
    {
        if (text.Trim().Length == 0)
        {
            return "Write the path of a file, such as ~/household.json.";
        }

        path = text.Trim();
        offer = door.ReadFile(PersonPath.Full(path));
        return null;
    }

    private Way.Visit Take(Household household) =>
        new(new Goal.Home(NewBook.Store(door.Store, household, door.Today), "The household is stored. Enter begins the first payday's routine.") { IsNews = true });
}
