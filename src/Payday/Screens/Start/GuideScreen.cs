using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Drafts;
using Payday.Core.ItemLines;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Learning;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Start;

/// <summary>Setting up a household for the first time, part after part.</summary>
internal sealed class GuideScreen : CursorScreen
{
    // Behind name and notes.
    private const int FirstList = 2;

    private readonly DraftWork work;
    private readonly MonthLine month;
    private readonly ImmutableArray<GuidePart> parts;
    private bool asked;
    private bool askedAccount;

    /// <summary>Goes on at the first part that isn't done.</summary>
    public GuideScreen(DraftWork work)
    {
        this.work = work;
        month = new MonthLine(work);
        parts =
        [
            new(SetupPart.Of(work, "Name and currency", "What the household is called, and the currency of every amount.", () => HouseholdFields.Name, 0, 1, 2), true, () => work.Draft is { Name: not null, Settings.Currency: not null }),
            new(SetupPart.Of(work, "Notes and coins", "The notes and coins you use; those usual for the currency are there to begin with.", () => HouseholdFields.Cash, 0), true, () => work.Draft.Settings.Notes is not null),
            .. SetupList.All.Select(list => new GuidePart(
                SetupPart.Of(work, list, list.IsNeeded ? "Who pays, and when" : null), list.IsNeeded, () => !list.Ordered(work.Draft).IsEmpty)),
            new(SetupPart.Of(work, "Fill day and bank", "When the wallet is filled, and whether notes come from a teller or a machine.", () => HouseholdFields.Bank, 0, 1, 5), false, () => false),
            new(SetupPart.Of(work, "What is there now", "What is in the account and at home today.", () => HouseholdFields.Opening(work), 1), false, () => false),
        ];
        Cursor = FirstOpen;
    }

    /// <inheritdoc/>
    public override string Title => "Set up your household";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words => SetupWords.All;

    /// <inheritdoc/>
    protected override string Aside => string.Create(CultureInfo.InvariantCulture, $"{parts.Count(IsDone)} of {parts.Length} parts done");

    /// <inheritdoc/>
    protected override int Count => parts.Length + 1;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Cursor == parts.Length
            ? new(Key.Enter, "Enter", "begin", "Store the household and go to the first payday.", Begin)
            : new(Key.Enter, "Enter", "open", "This part; Right leads on from there.", () => Open(Cursor)),
        Letters.List.Does("from statements", "Fill the lists from bank statements, line by line.", () => new Way.To(new StatementFilesScreen(work, new Onward("set up", BackFromStatements)))),
    ];

    /// <inheritdoc/>
    protected override string Detail => Cursor == parts.Length
        ? "Stores the household and goes home, where Enter begins the first payday's routine. What was taken as usual stands above: change it there, or later; only the currency stays."
        : parts[Cursor].Part.Help;

    /// <inheritdoc/>
    protected override string Status => parts.FirstOrDefault(part => part.IsNeeded && !part.IsFilled()) is { } needed
        ? $"Needed before the first payday: {needed.Part.Name}."
        : "All that is needed is there; each field is kept as it is entered.";

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        if (!parts[0].IsFilled())
        {
            Message = "Name and currency come first: Enter.";
            return true;
        }

        Message = PastedLines.Add(work, text, ItemSection.Sources);
        Cursor = SetupList.All.ToList().FindIndex(list => !list.Lines(work.Begun).IsEmpty) is >= 0 and int first ? FirstList + first : Cursor;
        return true;
    }

    /// <inheritdoc/>
    protected override IEnumerable<FrameLine> Under(int width) => month.Lines(work.Draft, width);

    private int FirstOpen => parts.ToList().FindIndex(part => !IsDone(part)) is >= 0 and int at ? at : parts.Length;

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [new("", Align.Right), new(""), Report.Names("") with { Grows = true }],
            [
                .. parts.Select((part, i) => ImmutableArray.Create((i + 1).ToString(CultureInfo.InvariantCulture), part.Part.Name, CleanText.OneLine(part.Part.Holds()))),
                ["", "Begin", ""],
            ],
            [],
            decimalMark: "").Lay(width);
        return ([], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) =>
        row < parts.Length && IsDone(parts[row]) ? (RowSigns.Done, Ink.Done) : (' ', Ink.Plain);

    private bool IsDone(GuidePart part) => part.IsFilled() || (!part.IsNeeded && work.HasPassed(part.Part.Name));

    private Way BackFromStatements()
    {
        Cursor = FirstOpen;
        return Way.Back;
    }

    private Way Open(int index)
    {
        // Amounts can't be read, and notes not proposed, before the currency is known.
        if (index > 0 && !parts[0].IsFilled())
        {
            Cursor = 0;
            Message = "Name and currency come first: Enter.";
            return Way.Stay;
        }

        return new Way.To(Screen(index));
    }

    private Screen Screen(int index) => parts[index].Part.Open(new Leads(this, index));

    private Way On(int from)
    {
        GuidePart part = parts[from];
        if (part.IsNeeded && !part.IsFilled())
        {
            Cursor = from;
            Message = $"{part.Part.Name} is needed before the rest; Enter goes back to it.";
            return Way.Back;
        }

        work.Pass(part.Part.Name);
        Cursor = from + 1;
        return Cursor < parts.Length ? new Way.Instead(Screen(Cursor)) : Way.Back;
    }

    private Way Back(int from)
    {
        Cursor = Math.Max(0, from - 1);
        return from > 0 ? new Way.Instead(Screen(Cursor)) : Way.Back;
    }

    private Way Begin()
    {
        if (parts.FirstOrDefault(part => part.IsNeeded && !part.IsFilled()) is { } needed)
        {
            Cursor = parts.IndexOf(needed);
            Message = $"{needed.Part.Name} is still needed: Enter.";
            return Way.Stay;
        }

        if (!asked && SetupList.All.FirstOrDefault(list => !list.Lines(work.Begun).IsEmpty) is { } written)
        {
            asked = true;
            Message = $"In {written.Title} there are lines that aren't taken yet. Enter once more begins without them.";
            return Way.Stay;
        }

        if (!asked && SetupList.All.FirstOrDefault(list => list.Begun(work.Begun) is not null) is { } begun)
        {
            asked = true;
            Message = $"In {begun.Title} one is begun and not complete: a goes on with it there. Enter once more begins without it.";
            return Way.Stay;
        }

        // A field that was passed by is as empty as one that was never seen, and all figures begin with it.
        if (!askedAccount && HouseholdCheck.Of(work.Draft).Ok && work.Draft.Opening?.Account is null or 0)
        {
            askedAccount = true;
            Cursor = parts.Length;
            Message = "The account begins with nothing in it: is that so? Enter once more begins; the part above says what is there now.";
            return Way.Stay;
        }

        (BookSession? session, IReadOnlyList<string> faults) = work.Begin();
        return session is null
            ? new Way.To(new FaultsScreen("This is still to mend", faults))
            : new Way.Visit(new Goal.Home(session, "The household is stored. Enter begins the first payday's routine.") { IsNews = true });
    }

    private sealed class Leads(GuideScreen guide, int index) : ISetupGuide
    {
        public string Here => string.Create(CultureInfo.InvariantCulture, $"part {index + 1} of {guide.parts.Length}");

        public string NextName => index + 1 < guide.parts.Length ? guide.parts[index + 1].Part.Name : "Begin";

        public string BeforeName => index > 0 ? guide.parts[index - 1].Part.Name : "the list of parts";

        public Way Next() => guide.On(index);

        public Way Before() => guide.Back(index);
    }
}
