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
internal sealed class EntryScreen(BookSession session)
    : KeptFormScreen(session, "entry", "enter it", "Write it to the ledger, as the lines under the fields say.")
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

    /// <inheritdoc/>
    public override string Title => "Came in or went out";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Refund", "what came back: while it is still owed back the pot owes less; else a cash pot's next fill has it more, and what is in the account has it at once."),
        ("Left to place", "money that waits for the next payday, which places it."),
        ("Loose notes", "notes at home that are in no pot; counted, they stand as they were found."),
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<FormField> Fields =>
    [
        new(Ways, "Way", "Came in, went out, or the loose notes at home counted.") { Picks = [new("in", "Came in", ""), new("out", "Went out", ""), new("counted", "Loose notes counted", "")], Usual = "in" },
        .. IsCount ? [Notes("All the loose notes at home, as you find them.")] : OfMoney(),
        TypedFields.Line(What, "What", IsCount ? "What the difference is called, where there is one." : "What it was, in a few words."),
        Session.Day(Day, "Day", "The day, like 2026-03-12 or 12 Mar; yesterday works too."),
    ];

    /// <inheritdoc/>
    protected override IEnumerable<string> Effect
    {
        get
        {
            if (After() is not { } after)
            {
                yield break;
            }

            if (!after.Ok)
            {
                yield return "! " + FaultTexts.Of(after.Fault, Session.Style);
                yield break;
            }

            foreach (Place place in new[] { Place.Account, Place.Cash })
            {
                (Money before, Money then) = (Book.Ledger.Balances.In(place), after.Value.Ledger.Balances.In(place));
                if (before != then)
                {
                    yield return $"{(place == Place.Account ? "Account" : "Cash")} {then.ToString(Session.Style)} (now {before.ToString(Session.Style)}).";
                }
            }

            foreach (LedgerEnd end in MoveEnds.From(Book).Concat(MoveEnds.To(Book)).Append(EntryEnds.ToPlace).Distinct())
            {
                (Money before, Money then) = (MoveEnds.Has(Book, end), MoveEnds.Has(after.Value, end));
                if (before != then)
                {
                    yield return $"{PurposeNames.Of(Book.Household, end)} {then.ToString(Session.Style)} (now {before.ToString(Session.Style)}{(end is LedgerEnd.Owed ? ", owed" : "")}).";
                }
            }
        }
    }

    private Book Book => Session.Book;

    private bool IsCount => Form[Ways] == "counted";

    private bool ComesIn => (Form[Ways] ?? "in") == "in";

    private SourceId? Pays => Form[For] is { } key && key.StartsWith(Source, StringComparison.Ordinal) ? new SourceId(key[Source.Length..]) : null;

    private LedgerEnd? End => Pays is not null ? EntryEnds.ToPlace : Form[For] is { } key ? EntryEnds.Of(Book).FirstOrDefault(end => end.Key == key) : null;

    private bool CanBeCash => End is LedgerEnd.At { Place: Place.Cash, Purpose.Kind: PurposeKind.Pot };

    private bool IsCash => End == MoveEnds.Loose || (CanBeCash && (Form[Where] ?? UsualWhere) == "cash");

    private string UsualWhere => ComesIn ? "account" : "cash";

    private EntryKind Usual => Pays is not null ? EntryKind.Income : End is { } end ? EntryEnds.UsualKind(end, ComesIn, IsCash) : EntryKind.Payment;

    /// <inheritdoc/>
    protected override Way Finish()
    {
        if (!IsCount && !TypedFields.AmountIn(Session, Text(AmountName)).Ok)
        {
            return At(AmountName, "Type how much first.");
        }

        if (!IsCount && End is null)
        {
            return At(For, "Pick what it is for first.");
        }

        if (After() is not { } after)
        {
            return At(NotesName, "Count the loose notes first.");
        }

        if (!after.Ok)
        {
            return Stay(FaultTexts.Of(after.Fault, Session.Style));
        }

        Form.Done(after.Value);
        return Way.Back;
    }

    private IEnumerable<FormField> OfMoney() =>
    [
        Session.Amount(AmountName, "Amount", $"How much, above zero; a sum like {Session.Style.Written("12.50+3")} is taken."),
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

    // Null while something is missing that has to be typed.
    private Result<Book>? After()
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

    private static long? ChequeIn(string text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number) && number > 0 ? number : null;
}
