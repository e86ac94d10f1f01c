using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Receiving;
using Payday.Core.Routines;
using Payday.Core.Status;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Entries;
using Payday.Screens.Fills;
using Payday.Screens.Moves;
using Payday.Screens.Shell;
using Payday.Text;
using Payday.Texts;

namespace Payday.Questions;

/// <summary>What to do now: what waits is proposed, each once.</summary>
/// <param name="session">The book.</param>
internal sealed class MenuPart(BookSession session) : Part
{
    private const string Payday = "payday";
    private const string Bills = "bills";
    private const string Count = "count";
    private const string Card = "card";
    private const string Return = "return";
    private const string Bank = "bank";
    private const string Fill = "fill";
    private const string Move = "move";
    private const string Entry = "entry";
    private const string Received = "received";
    private const string StopWord = "stop";

    private readonly HashSet<string> done = [];

    /// <summary>The parts by the words that lead to them, with what each is.</summary>
    public static ImmutableArray<(string Word, string What)> Words { get; } =
    [
        (Payday, "the routine of the next payday; one that was begun goes on where it was left"),
        (Bills, "bills and minimums that have left the account"),
        (Count, "the week-end count: what is left of the cash pots"),
        (Card, "something bought by card, or a refund"),
        (Return, "taking the cash that pots have to pay back to the bank"),
        (Bank, "the account against the bank, line by line"),
        (Fill, "filling the wallet for the week"),
        (Move, "money moved from one purpose to another"),
        (Entry, "what came in or went out outside a payday, or the loose notes counted"),
        (Received, "the notes that the bank really gave, where they aren't those of the slip"),
    ];

    /// <inheritdoc/>
    public override string Name => "menu";

    /// <inheritdoc/>
    public override string Empty => "";

    /// <inheritdoc/>
    public override IReadOnlyList<Question> Questions =>
    [
        new("what", $"What now? {Proposed} proposed{(Proposed == Payday && Routine.Next(session.Book) is { Ok: true, Value: var next } ? $", {DateText.Long(next)}" : "")}; ? names the rest.", Take)
        {
            Under = Name,
            Heading = () => OverviewNeeds.Of(session.Book).Concat(WeekNeeds.Of(session.Book, session.Today, NeedWays.None)),
            Help = [.. Words.Select(one => $"{one.Word}: {one.What}."), "Setting the household up, statements, looking back and undoing have commands of their own: payday --help."],
        },
    ];

    /// <inheritdoc/>
    public override Part? Open(string name) => name switch
    {
        Bills => new DuesPart(session),
        Count => new CountPart(session),
        Card => new PurchasePart(session),
        Return => new ReturnPart(session),
        Bank => new BankPart(session),
        Fill => new FillsPart(session),
        Move => new FormPart(session, Move, new MoveScreen(session), () => $"It is move {session.Book.Weeks.Moves[^1].Number}. payday move --undo {session.Book.Weeks.Moves[^1].Number} takes it back."),
        Entry => new FormPart(session, Entry, new EntryScreen(session), () => $"It is entry {session.Book.Weeks.Entries[^1].Number}. payday entry --undo {session.Book.Weeks.Entries[^1].Number} takes it back."),
        Received when session.Book.LastClosed is not null => new FormPart(session, Received, new ReceivedScreen(session), () => "Entered. The filling sheet is made anew: payday slip --filling shows it."),
        _ => RoutinePart.Of(session) is { Ok: true, Value: var routine } && (name == Payday || name == routine.Name) ? routine : null,
    };

    /// <summary>The part that a word leads into; or why there is none.</summary>
    public Result<Part> Into(string word) => Open(word) is { } part ? Result.Of(part)
        : Result.Refused<Part>(word == Payday && RoutinePart.Of(session) is { Ok: false } routine ? routine.Fault : new ReceivingFault.NoSlip());

    private string Proposed
    {
        get
        {
            BookStatus status = BookStatus.Of(session.Book, session.Today);
            (string Word, bool Waits)[] order =
            [
                (Count, status.CountOpenSince is not null),
                (Payday, session.Book.Draft is not null || (status.NextPayday is { } next && Period.DaysBetween(session.Today, next) <= 1)),
                (Fill, status.FillsWaiting > 0),
                (Return, status.OwedBack.IsPositive),
            ];
            return order.Where(one => one.Waits && !done.Contains(one.Word)).Select(one => one.Word).FirstOrDefault(StopWord);
        }
    }

    private Taken Take(string answer)
    {
        string asked = answer.Length == 0 ? Proposed : answer;
        if (asked == StopWord)
        {
            return new Taken.Stop();
        }

        var words = new NamedChoice<string>([.. Words.Select(one => (one.Word, one.Word))]);
        if (words.Find(asked, out string word) is { } unknown)
        {
            return new Taken.Refused(unknown);
        }

        done.Add(word);
        Result<Part> part = Into(word);
        return part.Ok ? new Taken.Into(part.Value) : new Taken.Refused(FaultTexts.Of(part.Fault, session.Style));
    }
}
