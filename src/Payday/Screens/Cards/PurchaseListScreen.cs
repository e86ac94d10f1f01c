using System.Collections.Immutable;
using System.Globalization;
using Humanizer;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.CardPurchases;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Files;
using Payday.Lists;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Store.Fields;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Cards;

/// <summary>Many card purchases at once: a pasted list or a file, with pots guessed from earlier ones.</summary>
internal sealed class PurchaseListScreen(BookSession session) : CursorScreen
{
    private PurchaseList list = new([], []);

    // Of a list pasted anew too.
    private DebtId? card;

    /// <inheritdoc/>
    public override string Title => "Card purchases from a list";

    /// <inheritdoc/>
    protected override string Aside => Count == 0
        ? ""
        : $"{"purchase".ToQuantity(Bought.Length)}, {Money.Sum(Bought.Select(line => line.Entry.Total), session.Book.Household.Currency).ToString(session.Style)}"
            + (Bought.Length == Lines.Length ? "" : $"; {Lines.Length - Bought.Length} came in")
            + (Faults.IsEmpty ? "" : $"; {"line".ToQuantity(Faults.Length)} not read");

    /// <inheritdoc/>
    protected override int Count => Faults.Length + Lines.Length;

    /// <inheritdoc/>
    protected override string Empty =>
        $"Paste the list here, or give its file with Ctrl+F. Each line has date, amount and text, such as {PurchaseTexts.Example(session.Style)}. Between them stands a tab, a semicolon or a comma; a text or an amount that has a comma itself stands in quotes.";

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. Here is null ? Array.Empty<Binding>() : [new Binding(Key.Enter, "Enter", "pot", "Pick the pot of this line, and of the same shop's other lines; a letter goes to the next pot that begins with it.", () => new Way.To(Picks(Here!)))],
        .. Here is null ? Array.Empty<Binding>() : [new Binding(Key.N.WithCtrl, "Ctrl+N", "split", "Split this line over several pots, each with its part.", Split)],
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(new Key('x').WithCtrl, "Ctrl+X", "leave out", "Leave this line out.", LeaveOut)],
        .. Count == 0 ? Array.Empty<Binding>() : [new Binding(Key.Delete, "Del", Faults.Length > 1 ? "forget all" : "", "Forget the whole list, after a question.", () => new Way.To(Forgetting()))],
        .. Lines.IsEmpty || session.Book.Household.Debts.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.B.WithCtrl, "Ctrl+B", "", "Whose card paid all of the list: the account's, or that of a debt.", () => new Way.To(Cards()))],
        new(new Key('f').WithCtrl, "Ctrl+F", Lines.IsEmpty ? "file" : "", "Read the list from a file.", () => new Way.Edit(new CellEdit("File", "", FromFile) { Most = CellEdit.Long })),
    ];

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> LastKeys =>
    [
        .. Lines.IsEmpty ? Array.Empty<Binding>() : [new Binding(Key.CursorRight, "Right", "enter all", "Write all of them to the ledger, or none; first each line has a pot or is left out.", Enter)],
        ShellKeys.Help(this),
        new(Key.Esc, "Esc", "back", "Back; the list is here again until it is entered.", () => Way.Back),
    ];

    /// <inheritdoc/>
    protected override string Detail => (Fault, Here) switch
    {
        ({ } fault, _) => CleanText.OneLine(FaultTexts.Of(fault, session.Style)),
        (_, { IsRefund: true, IsOpen: true }) => "This money came in. Was it a refund, pick the pot it is for: it has less to pay back, or has it again; else leave it out.",
        (_, { Entry.Others.IsEmpty: false } line) => $"{string.Join(", ", line.Entry.Parts.Select(part => $"{part.Amount.ToString(session.Style)} {(line.IsRefund ? "back to" : "from")} {WeekText.PotName(session.Book, part.PotId)}"))}.",
        (_, { Choice: PotChoice.Guessed, Guess: { } guess }) => $"Like purchase {guess.LikeNumber}, {CleanText.OneLine(session.Book.Weeks.Purchases[(int)guess.LikeNumber - 1].What)}.",
        (_, { Choice: PotChoice.Alike }) => "As chosen for another line of this shop.",
        (_, { IsOpen: true }) => "Nothing like it was bought before: pick its pot, or leave it out.",
        _ => "",
    };

    /// <inheritdoc/>
    protected override string Status => Faults.IsEmpty
        ? !Lines.IsEmpty && card is { } debt ? $"Paid by {EndText.Debt(session.Book.Household, debt)}: its balance rises, and nothing leaves the account."
            : Lines.IsEmpty || session.Book.Household.Debts.IsEmpty ? ""
            : "The account paid; Ctrl+B names a debt whose card did."
        : $"{"line".ToQuantity(Faults.Length)} at the top not read: mend and paste the list again, or leave {(Faults.Length == 1 ? "it" : "them")} out.";

    private ImmutableArray<PurchaseLine> Lines => list.Lines;

    private ImmutableArray<ListFault> Faults => list.Faults;

    private PurchaseLine[] Bought => [.. Lines.Where(line => !line.IsRefund)];

    // What was not read comes first, where it is seen.
    private ListFault? Fault => Cursor < Faults.Length ? Faults[Cursor] : null;

    private PurchaseLine? Here => Cursor >= Faults.Length && Cursor < Count ? Lines[Cursor - Faults.Length] : null;

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
            PotId?[] pots = [.. session.Book.Household.Pots.Select(pot => pot.Id), null];
            int now = line.IsOpen ? pots.Length - 1 : Array.IndexOf(pots, line.Entry.PotId);
            int next = NextName.From([.. pots.Select(pot => WeekText.PotName(session.Book, pot))], now, text);
            if (WeekText.PotName(session.Book, pots[next]).StartsWith(text, StringComparison.OrdinalIgnoreCase))
            {
                list = list.Choose(line.Number, pots[next]);
            }
        }

        return null;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines table = new TextTable(
            [new("line", Align.Right), new("date"), Report.Amounts("amount"), new("what") { Shrinks = true, MinWidth = 10 }, Report.Names("pot")],
            [
                .. Faults.Select(fault => ImmutableArray.Create(Number(fault), "", "", CleanText.OneLine(What(fault)), "")),
                .. Lines.Select(line => ImmutableArray.Create(
                    line.Number.ToString(CultureInfo.InvariantCulture),
                    Day(line.Entry.Date),
                    (line.IsRefund ? -line.Entry.Total : line.Entry.Total).ToString(session.Style),
                    line.Entry.What,
                    line.IsOpen ? "?" : string.Join(", ", line.Entry.Parts.Select(part => WeekText.PotName(session.Book, part.PotId))))),
            ],
            decimalMark: session.Style.DecimalMark).Lay(width);
        return (table.Header, table.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) =>
        row < Faults.Length ? ('!', Ink.Alert) : Lines[row - Faults.Length].IsOpen ? ('!', Ink.Alert) : (' ', Ink.Plain);

    private static string Number(ListFault fault) => fault is ListFault.AtLine line ? line.Number.ToString(CultureInfo.InvariantCulture) : "";

    // The line's number has a column of its own.
    private string What(ListFault fault) => FaultTexts.Of(fault is ListFault.AtLine line ? line.What : fault, session.Style);

    private void Read(string text)
    {
        list = ListCells.Purchases(session.Book, text, session.Today).By(card);
        Cursor = 0;
        Message = Count == 0 ? "There was nothing in it." : "";
    }

    private string? FromFile(string path)
    {
        Result<string> text = InputFile.Text(path.Trim(), ListCells.MostBytes);
        if (text.Ok)
        {
            Read(text.Value);
        }

        return text.Ok ? null : FaultTexts.Of(text.Fault, session.Style);
    }

    private PickScreen<PotId?> Picks(PurchaseLine line) => new(
        $"{Day(line.Entry.Date)}, {line.Entry.Total.ToString(session.Style)}: which pot",
        PotPicks.Of(session),
        line.IsOpen ? session.Book.Household.Pots.FirstOrDefault()?.Id : line.Entry.PotId,
        pot =>
        {
            list = list.Choose(line.Number, pot);
            return Way.Back;
        });

    private PickScreen<DebtId?> Cards() => new("Paid by", PotPicks.Cards(session), card, picked =>
    {
        card = picked;
        list = list.By(picked);
        return Way.Back;
    });

    private Way Split()
    {
        PurchaseLine line = Here!;
        ImmutableArray<SaidPart> said = line.IsOpen
            ? [new SaidPart(session.Book.Household.Pots.FirstOrDefault()?.Id, null)]
            : [.. line.Entry.Parts.Select((part, i) => new SaidPart(part.PotId, i == 0 ? null : part.Amount))];
        return new Way.To(new PartsScreen(session, $"{Day(line.Entry.Date)}: {CleanText.OneLine(line.Entry.What)}", line.Entry.Total, said, parts =>
            list = list.Split(line.Number, [.. parts.Select(part => (part.PotId, part.Amount))]).Value ?? list));
    }

    // The year is named where it is not the one that goes without saying.
    private string Day(LocalDate date) => DateText.Short(date) + (date.Year == session.Today.Year ? "" : $" {date.Year}");

    private ForgetScreen Forgetting() => new(
        $"Forget {"line".ToQuantity(Count)} of the list?",
        "Nothing of the list is in the ledger yet, and nothing will be. It can be pasted or read again.",
        () =>
        {
            list = new PurchaseList([], []);
            Cursor = 0;
        });

    private Way LeaveOut()
    {
        list = list.Without(Fault is ListFault.AtLine fault ? fault.Number : Here?.Number ?? 0) ?? list;
        return Way.Stay;
    }

    private Way Enter()
    {
        int first = Faults.IsEmpty ? Lines.ToList().FindIndex(line => line.IsOpen) : 0;
        if (first >= 0)
        {
            Cursor = first;
            Message = Faults.IsEmpty
                ? $"{"line".ToQuantity(list.Open.Count())} without a pot: pick one, or leave the line out with Ctrl+X. Nothing is written."
                : $"{"line".ToQuantity(Faults.Length)} not read: leave {(Faults.Length == 1 ? "it" : "each")} out with Ctrl+X, or paste a mended list. Nothing is written.";
            return Way.Stay;
        }

        Result<Book> after = PurchaseList.Enter(session.Book, Lines);
        if (!after.Ok)
        {
            Message = FaultTexts.Of(after.Fault, session.Style);
            return Way.Stay;
        }

        session.Take(after.Value);
        list = new PurchaseList([], []);
        card = null;
        return Way.Back;
    }
}
