using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Weeks;
using Payday.Reports;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Terminal.Gui.Input;

namespace Payday.Screens.Weeks;

/// <summary>Many card purchases at once: a pasted list or a file, with pots guessed from earlier ones.</summary>
internal sealed class PurchaseListScreen(BookSession session) : CursorScreen
{
    private const long LargestFile = 5_000_000;

    private ImmutableArray<PurchaseLine> lines = [];
    private ImmutableArray<string> faults = [];

    /// <inheritdoc/>
    public override string Title => "Card purchases from a list";

    /// <inheritdoc/>
    protected override string Aside => lines.IsEmpty ? "" : $"{"purchase".ToQuantity(lines.Length)}, {Money.Sum(lines.Select(line => line.Entry.Amount), session.Book.Household.Currency).ToString(session.Style)}";

    /// <inheritdoc/>
    protected override int Count => lines.Length;

    /// <inheritdoc/>
    protected override string Empty =>
        "Paste the list here, or give its file with Ctrl+F. Each line has date, amount and text, such as 2026-03-07, 12.50, Corner shop; between them a tab, a semicolon or a comma.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. lines.IsEmpty
            ? Array.Empty<Binding>()
            :
            [
                new(Key.Enter, "Enter", "pot", "Pick the pot of this purchase; a letter goes to the next one that begins with it.", () => new Way.To(Picks())),
                new(new Key('x').WithCtrl, "Ctrl+X", "leave out", "Leave this line out.", LeaveOut),
            ],
        new(new Key('f').WithCtrl, "Ctrl+F", "file", "Read the list from a file.", () => new Way.Edit(new CellEdit("File", "", FromFile) { Acts = true })),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. lines.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.CursorRight, "Right", "enter all", "Write all of them to the ledger, or none.", Enter)],
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; the list is here again until it is entered.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => !faults.IsEmpty
        ? $"Not read, {"line".ToQuantity(faults.Length)}: {CleanText.OneLine(faults[0])}"
        : lines.IsEmpty ? "" : Here.Guess is { } guess
            ? $"Like purchase {guess.LikeNumber}, {CleanText.OneLine(session.Book.Weeks.Purchases[(int)guess.LikeNumber - 1].What)}."
            : "Nothing like it was bought before: pick its pot, or it is taken from the buffer.";

    private PurchaseLine Here => lines[Math.Clamp(Cursor, 0, lines.Length - 1)];

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        Read(text);
        return true;
    }

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (!lines.IsEmpty)
        {
            string?[] pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
            Choose(pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], Array.IndexOf(pots, Here.Entry.PotId), text)]);
        }

        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, ImmutableArray<string> Rows) Table(int width)
    {
        TextTableLines table = new TextTable(
            [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("what") { Shrinks = true, MinWidth = 10 }, Report.Names("pot")],
            [.. lines.Select(line => ImmutableArray.Create(
                line.Number.ToString(CultureInfo.InvariantCulture),
                DateText.Short(line.Entry.Date),
                line.Entry.Amount.ToString(session.Style),
                line.Entry.What,
                WeekText.PotName(session.Book, line.Entry.PotId)))],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (table.Header, table.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => lines[row] is { Guess: null, Entry.PotId: null } ? ('!', Ink.Hand) : (' ', Ink.Plain);

    private void Read(string text)
    {
        PurchaseList list = PurchaseList.Read(session.Book, text);
        lines = list.Lines;
        faults = list.Faults;
        Cursor = 0;
        Message = lines.IsEmpty && faults.IsEmpty ? "There was nothing in it." : "";
    }

    private string? FromFile(string path)
    {
        try
        {
            var file = new FileInfo(path.Trim());
            if (!file.Exists)
            {
                return "There is no such file; write its whole path.";
            }

            if (file.Length > LargestFile)
            {
                return "That file is too large to be a list of purchases.";
            }

            Read(File.ReadAllText(file.FullName));
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return "That file can't be read.";
        }
    }

    private PickScreen<string?> Picks() => new(
        $"{DateText.Short(Here.Entry.Date)}, {Here.Entry.Amount.ToString(session.Style)}: which pot",
        [
            .. session.Book.Household.Pots.Select(pot => new PickItem<string?>(pot.Id, pot.Name, PotsReport.Place(pot))),
            new PickItem<string?>(null, "Buffer", "account"),
        ],
        Here.Entry.PotId,
        pot =>
        {
            Choose(pot);
            return Way.Back;
        });

    private void Choose(string? pot) => lines = lines.SetItem(Cursor, Here.For(pot));

    private Way LeaveOut()
    {
        lines = lines.RemoveAt(Cursor);
        return Way.Stay;
    }

    private Way Enter()
    {
        Read<Book> after = PurchaseList.Enter(session.Book, lines);
        if (!after.Ok)
        {
            Message = after.Fault;
            return Way.Stay;
        }

        session.Take(after.Value);
        lines = [];
        faults = [];
        return Way.Back;
    }
}
