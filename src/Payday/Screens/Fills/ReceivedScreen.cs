using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Faults;
using Payday.Core.Receiving;
using Payday.Core.Undo;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Forms;
using Payday.Screens.Frames;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Fills;

/// <summary>Which notes the bank really gave for the slip of the last closed payday, and what becomes of the filling.</summary>
internal sealed class ReceivedScreen : KeptFormScreen
{
    private const string Day = "day";
    private const int Most = 10_000;

    private readonly ClosedPayday closed;

    /// <param name="session">The book, with a closed payday.</param>
    public ReceivedScreen(BookSession session)
        : base(session, $"notes received {LocalDatePattern.Iso.Format(session.Book.LastClosed!.Payday)}", "enter", "Enter these notes: the filling sheet is made anew from them.") => closed = session.Book.LastClosed!;

    /// <inheritdoc/>
    public override string Title => "Notes the bank gave";

    /// <inheritdoc/>
    protected override string Aside => "slip of " + DateText.Weekday(closed.Payday);

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        .. base.Keys,
        .. ReceivingUndo.Last(Session.Book) is null ? Array.Empty<Binding>() : [Letters.Undo.Does("take back", "Take back what was entered: what the slip asked for stands again.", Undo)],
    ];

    /// <inheritdoc/>
    protected override ImmutableArray<FormField> Fields
    {
        get
        {
            CashPieces cash = Session.Book.Household.Settings.Cash;
            Notes before = ReceivingUndo.Last(Session.Book)?.Got ?? closed.Withdraw;
            IEnumerable<long> values = cash.Notes.Select(note => note.MinorUnits).Union(closed.Withdraw.Values).Union(before.Values).OrderDescending();
            return
            [
                .. values.Select(value => new FormField(Name(value), "Notes of " + NoteText.Value(value, Session.Book.Household.Currency, Session.Style), Help(value))
                {
                    Usual = Number(before[value]),
                    Fault = text => HowMany(text) is null ? $"Write a whole number, at most {Most}." : null,
                }),
                Session.Day(Day, "Fetched on", "The day on which the notes were fetched, from the payday on."),
            ];
        }
    }

    /// <inheritdoc/>
    protected override IEnumerable<Said> Effect
    {
        get
        {
            Result<ReceivingPlan> plan = ReceivingPlan.Of(Session.Book, Got);
            return plan.Ok ? ReceivedReport.Of(Session.Book.Household, plan.Value).Select(line => (Said)line) : [Said.Alert(Why(plan.Fault))];
        }
    }

    private Notes Got => Notes.Of(Fields
        .Where(note => note.Name != Day)
        .Select(note => (long.Parse(note.Name, CultureInfo.InvariantCulture), HowMany(Text(note.Name)) ?? 0))
        .Where(note => note.Item2 > 0));

    /// <inheritdoc/>
    protected override Way Finish()
    {
        Result<LocalDate> day = TypedFields.DayIn(Session, Text(Day));
        if (!day.Ok)
        {
            return At(Day, FaultTexts.Of(day.Fault, Session.Style));
        }

        // A payday that is closed before its day can be fetched then at the earliest.
        LocalDate fetched = Form[Day] is null && day.Value < closed.Payday ? closed.Payday : day.Value;
        Result<Book> after = ReceivingPlan.Of(Session.Book, Got).Then(plan => plan.Confirm(fetched));
        if (!after.Ok)
        {
            return Stay(Why(after.Fault));
        }

        Form.Done(after.Value);
        return new Way.Home("Entered. The filling sheet is made anew: v shows it.");
    }

    private static string Name(long value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static int? HowMany(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count <= Most ? count : null;

    private string Help(long value) => $"How many were given; the slip asks for {Number(closed.Withdraw[value])}.";

    private string Why(Fault fault) => fault is Obstacle obstacle ? Session.IsByLine ? UndoTexts.WithCommands(obstacle, Session.Style) : UndoTexts.WithKeys(obstacle, Session.Style) : FaultTexts.Of(fault, Session.Style);

    private Way.To Undo() => new(new TakeBackScreen(
        Session,
        "Take back the notes received",
        ["What the slip asked for stands again, and the filling as the payday planned it."],
        () => ReceivingUndo.InTheWay(Session.Book),
        () => ReceivingUndo.Of(Session.Book, Session.Today),
        "Taken back: the filling is as the slip asked for it.",
        endsAtHome: true));
}
