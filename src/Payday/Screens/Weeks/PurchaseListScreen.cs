using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using NodaTime;
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
    private ImmutableArray<PurchaseFault> faults = [];

    /// <inheritdoc/>
    public override string Title => "Card purchases from a list";

    /// <inheritdoc/>
    protected override string Aside => Count == 0
        ? ""
        : $"{"purchase".ToQuantity(lines.Length)}, {Money.Sum(lines.Select(line => line.Entry.Amount), session.Book.Household.Currency).ToString(session.Style)}"
            + (faults.IsEmpty ? "" : $"; {"line".ToQuantity(faults.Length)} not read");

    /// <inheritdoc/>
    protected override int Count => faults.Length + lines.Length;

    /// <inheritdoc/>
    protected override string Empty =>
        $"Paste the list here, or give its file with Ctrl+F. Each line has date, amount and text, such as {PurchaseList.Example(session.Style)}. Between them stands a tab, a semicolon{(session.Style.DecimalMark == "," ? "" : " or a comma")}.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Here is null ? Array.Empty<Binding>() : [new Binding(Key.Enter, "Enter", "pot", "Pick the pot of this purchase; a letter goes to the next one that begins with it.", () => new Way.To(Picks(Here!)))],
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(new Key('x').WithCtrl, "Ctrl+X", "leave out", "Leave this line out.", LeaveOut)],
        new(new Key('f').WithCtrl, "Ctrl+F", "file", "Read the list from a file.", () => new Way.Edit(new CellEdit("File", "", FromFile) { Most = CellEdit.Long })),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. lines.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.CursorRight, "Right", "enter all", "Write all of them to the ledger, or none; a line that was not read is not among them.", Enter)],
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; the list is here again until it is entered.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => (Fault, Here) switch
    {
        ({ } fault, _) => CleanText.OneLine(fault.ToString()),
        (_, { Guess: { } guess }) => $"Like purchase {guess.LikeNumber}, {CleanText.OneLine(session.Book.Weeks.Purchases[(int)guess.LikeNumber - 1].What)}.",
        (_, not null) => "Nothing like it was bought before: pick its pot, or it is taken from the buffer.",
        _ => "",
    };

    /// <inheritdoc/>
    protected override string Status => faults.IsEmpty
        ? ""
        : $"{"line".ToQuantity(faults.Length)} at the top not read, and not entered: mend and paste the list again.";

    // What was not read comes first, where it is seen.
    private PurchaseFault? Fault => Cursor < faults.Length ? faults[Cursor] : null;

    private PurchaseLine? Here => Cursor >= faults.Length && Cursor < Count ? lines[Cursor - faults.Length] : null;

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        Read(text);
        return true;
    }

    /// <inheritdoc/>
    public override CellEdit? Typing(string text)
    {
        if (Here is { } line)
        {
            string?[] pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
            Choose(line, pots[NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], Array.IndexOf(pots, line.Entry.PotId), text)]);
        }

        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines table = new TextTable(
            [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("what") { Shrinks = true, MinWidth = 10 }, Report.Names("pot")],
            [
                .. faults.Select(fault => ImmutableArray.Create(fault.Number == 0 ? "" : fault.Number.ToString(CultureInfo.InvariantCulture), "", "", CleanText.OneLine(fault.Fault), "")),
                .. lines.Select(line => ImmutableArray.Create(
                    line.Number.ToString(CultureInfo.InvariantCulture),
                    Day(line.Entry.Date),
                    line.Entry.Amount.ToString(session.Style),
                    line.Entry.What,
                    WeekText.PotName(session.Book, line.Entry.PotId))),
            ],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (table.Header, table.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) =>
        row < faults.Length ? ('!', Ink.Hand) : lines[row - faults.Length] is { Guess: null, Entry.PotId: null } ? ('!', Ink.Hand) : (' ', Ink.Plain);

    private void Read(string text)
    {
        PurchaseList list = PurchaseList.Read(session.Book, text, session.Today);
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

    private PickScreen<string?> Picks(PurchaseLine line) => new(
        $"{Day(line.Entry.Date)}, {line.Entry.Amount.ToString(session.Style)}: which pot",
        [
            .. session.Book.Household.Pots.Select(pot => new PickItem<string?>(pot.Id, pot.Name, PotsReport.Place(pot))),
            new PickItem<string?>(null, "Buffer", "account"),
        ],
        line.Entry.PotId,
        pot =>
        {
            Choose(line, pot);
            return Way.Back;
        });

    private void Choose(PurchaseLine line, string? pot) => lines = lines.Replace(line, line.For(pot));

    // The year is named where it is not the one that goes without saying.
    private string Day(LocalDate date) => DateText.Short(date) + (date.Year == session.Today.Year ? "" : $" {date.Year}");

    private Way LeaveOut()
    {
        if (Fault is { } fault)
        {
            faults = faults.Remove(fault);
        }
        else
        {
            lines = lines.Remove(Here!);
        }

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
