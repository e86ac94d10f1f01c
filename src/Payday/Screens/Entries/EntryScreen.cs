using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.AccountEntries;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Reports;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Texts;

namespace Payday.Screens.Entries;

/// <summary>What came in or went out outside a payday, or the loose notes counted.</summary>
internal sealed class EntryScreen : BookFormScreen
{
    private const string Ways = "way";
    private const string AmountName = "amount";
    private const string For = "for";
    private const string Kind = "kind";
    private const string Where = "where";
    private const string What = "what";
    private const string NotesName = "notes";
    private const string Cheque = "cheque";
    private const string Day = "day";
    private const string Source = "source:";

    private readonly Money? missing;

    /// <param name="session">The book.</param>
    /// <param name="missing">What is proposed while nothing else is typed: above zero what came in, below what went out; null for nothing.</param>
    public EntryScreen(BookSession session, Money? missing = null)
        : base(session, "entry", "store it", "Write it to the ledger, as the lines under the fields say.")
    {
        this.missing = missing;
        Cursor = missing is null || Form.IsBegun ? 0 : Fields.ToList().FindIndex(field => field.Name == For);
    }

    /// <inheritdoc/>
    public override string Title => "Came in or went out";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Refund", "what came back: while it is still to pay back, that gets less; else a cash pot's next fill has it more, and what is in the account has it at once."),
        ("Left to place", "money that waits for the next payday, which places it."),
        ("Loose notes", "notes at home that are in no pot; counted, they stand as they were found."),
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<FormField> Fields =>
    [
        new(Ways, "Way", "Came in, went out, or the loose notes at home counted.") { Picks = [new("in", "Came in", ""), new("out", "Went out", ""), new("counted", "Loose notes counted", "")], Usual = UsualWay },
        .. IsCount ? [Notes("All the loose notes at home, as you find them.")] : OfMoney(),
        TypedFields.Line(What, "What", IsCount ? "What the difference is called, where there is one." : "What it was, in a few words."),
        Session.Day(Day, "Day", "The day, like 2026-03-12 or 12 Mar; yesterday works too."),
    ];

    /// <inheritdoc/>
    protected override Result<Book>? After
    {
        get
        {
            if (TypedFields.DayIn(Session, Text(Day)) is not { Ok: true } day)
            {
                return null;
            }

            Notes? notes = NotesField.In(Session, Form[NotesName]);
            if (IsCount)
            {
                return notes is null ? null : Entering.CountLoose(Book, day.Value, notes, Text(What));
            }

            return End is { } end && TypedFields.AmountIn(Session, Text(AmountName)) is { Ok: true } amount
                ? Entering.Enter(Book, new EntryWish(day.Value, Enum.TryParse(Form[Kind], out EntryKind kind) ? kind : Usual, end, ComesIn ? amount.Value : -amount.Value, Text(What))
                {
                    Source = Pays,
                    IsCash = IsCash,
                    Notes = IsCash ? notes : null,
                    Cheque = !ComesIn && !IsCash && Form[Cheque] is { } number ? ChequeIn(number) : null,
                })
                : null;
        }
    }

    /// <inheritdoc/>
    protected override (string Field, string Todo) Missing =>
        IsCount ? (NotesName, "Count the loose notes first.")
        : TypedFields.AmountIn(Session, Text(AmountName)).Ok ? (For, "Pick what it is for first.")
        : (AmountName, "Type how much first.");

    /// <inheritdoc/>
    protected override IEnumerable<string> Changes(Book after) => BalanceChanges.Of(Book, after, MoveEnds.From(Book).Concat(MoveEnds.To(Book)).Append(EntryEnds.ToPlace));

    private bool IsCount => Form[Ways] == "counted";

    private bool ComesIn => (Form[Ways] ?? UsualWay) == "in";

    private string UsualWay => missing is { IsNegative: true } ? "out" : "in";

    private SourceId? Pays => Form[For] is { } key && key.StartsWith(Source, StringComparison.Ordinal) ? new SourceId(key[Source.Length..]) : null;

    private LedgerEnd? End => Pays is not null ? EntryEnds.ToPlace : Form[For] is { } key ? EntryEnds.Of(Book).FirstOrDefault(end => end.Key == key) : null;

    private bool CanBeCash => End is LedgerEnd.At { Place: Place.Cash, Purpose.Kind: PurposeKind.Pot };

    private bool IsCash => End == MoveEnds.Loose || (CanBeCash && (Form[Where] ?? UsualWhere) == "cash");

    private string UsualWhere => ComesIn ? "account" : "cash";

    private EntryKind Usual => Pays is not null ? EntryKind.Income : End is { } end ? EntryEnds.UsualKind(end, ComesIn, IsCash) : EntryKind.Payment;

    private IEnumerable<FormField> OfMoney() =>
    [
        Session.Amount(AmountName, "Amount", $"How much, above zero; a sum like {Session.Style.Written("12.50+3")} is taken.") with { Usual = missing is { IsNegative: var isLess } amount ? (isLess ? -amount : amount).ToString(Session.Style) : "" },
        new(For, "For", "What it is for: who paid, what gets or gives it, or the debt it belongs to.") { Picks = Purposes() },
        .. CanBeCash ? [new FormField(Where, "Where", "Money of the account, or cash.") { Picks = [new("account", "Account", ""), new("cash", "Cash", "")], Usual = UsualWhere }] : Array.Empty<FormField>(),
        new(Kind, "Kind", "What sort of money; the usual one for it stands there.") { Picks = [.. Enum.GetValues<EntryKind>().Select(kind => new PickItem<string>(kind.ToString(), EntryKindText.Of(kind), ""))], Usual = End is null ? "" : Usual.ToString() },
        .. IsCash ? [Notes("The notes; those of a pot may be left empty where they aren't known.")] : Array.Empty<FormField>(),
        .. !ComesIn && !IsCash && End is LedgerEnd.At ? [new FormField(Cheque, "Cheque", "The number of the cheque it was paid by; empty where it was none.") { Fault = text => ChequeIn(text) is null ? "Write the number of the cheque." : null }] : Array.Empty<FormField>(),
    ];

    private FormField Notes(string help) => NotesField.Of(Session, Form, NotesName, "Notes", help);

    private ImmutableArray<PickItem<string>> Purposes() =>
    [
        .. ComesIn ? Book.Household.Sources.Select(source => new PickItem<string>(Source + source.Id.Text, source.Name, "income")) : [],
        .. EntryEnds.Of(Book).Select(end => new PickItem<string>(end.Key, PurposeNames.Of(Book.Household, end), PurposeNames.Sort(end))),
    ];

    private static long? ChequeIn(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number) && number > 0 ? number : null;
}
