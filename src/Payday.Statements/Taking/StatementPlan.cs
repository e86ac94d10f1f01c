using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.StatementTaking;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Sums;

namespace Payday.Statements.Taking;

/// <summary>Statements held against a book: which lines it knows, which it has, and what the others might become. Nothing is written down by it.</summary>
/// <param name="Book">The book.</param>
/// <param name="Statements">The statements of its account, by their days.</param>
/// <param name="Lines">Their lines that no taking has, or has left, by their days.</param>
/// <param name="Known">How many of their lines are taken already.</param>
/// <param name="BeforeStart">How many are of days before the household's first, and so in its opening balance.</param>
/// <param name="Gaps">Where a statement may be missing.</param>
/// <param name="Open">Lines of the account that the bank doesn't show.</param>
public sealed record StatementPlan(
    Book Book,
    ImmutableArray<Statement> Statements,
    ImmutableArray<PlannedLine> Lines,
    int Known,
    int BeforeStart,
    ImmutableArray<StatementStep> Gaps,
    ImmutableArray<OpenPartner> Open)
{
    /// <summary>The bank's balance after the last of them, as the person said it; null where the file has it, or nobody does.</summary>
    public Money? Balance { get; init; }

    /// <summary>The last of the statements.</summary>
    public Statement Last => Statements[^1];

    /// <summary>The bank's balance after the last of them; null where nobody says.</summary>
    public Money? Closing => Last.Closing?.Amount ?? Balance;

    /// <summary>The lines that are lines of the account, by the margin.</summary>
    public IEnumerable<PlannedLine> Matched => Lines.Where(line => line.State == PlannedState.Matched);

    /// <summary>The others, by their numbers.</summary>
    public IEnumerable<PlannedLine> Others => Lines.Where(line => line.State != PlannedState.Matched);

    /// <summary>Holds statements against a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="statements">What was read, in any order.</param>
    /// <param name="options">What the person said.</param>
    /// <param name="today">Today.</param>
    /// <returns>The plan; or why nothing can be proposed.</returns>
    public static Result<StatementPlan> Of(Book book, IReadOnlyList<Statement> statements, PlanOptions options, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(statements);
        ArgumentNullException.ThrowIfNull(options);
        Result<ImmutableArray<Statement>> chosen = ChosenAccount.Of(book, statements, options.Account);
        if (!chosen.Ok)
        {
            return Result.Refused<StatementPlan>(chosen.Faults);
        }

        ImmutableArray<Statement> inOrder = [.. chosen.Value.OrderBy(statement => statement.From).ThenBy(statement => statement.To)];
        foreach (Statement statement in inOrder)
        {
            if (Fault(book, statement, today) is { } fault)
            {
                return Result.Refused<StatementPlan>(fault);
            }
        }

        var found = NewLines.Of(book, inOrder);
        (ImmutableArray<PlannedLine> lines, ImmutableArray<OpenPartner> open) = Planned(book, [.. found.Lines.OrderBy(line => line.Line.Date)], inOrder);
        return Result.Of(new StatementPlan(
            book,
            inOrder,
            Numbered(lines, options.Choices),
            found.Known,
            found.BeforeStart,
            StatementGaps.Of(book, inOrder),
            open)
        {
            Balance = options.Balance,
        });
    }

    /// <summary>The same with something chosen for a line.</summary>
    /// <param name="key">What the line is known by; one that isn't there changes nothing.</param>
    /// <param name="choice">What it is to become; null to take the choice back.</param>
    public StatementPlan With(string key, Proposal? choice) =>
        this with { Lines = [.. Lines.Select(line => line.Key == key && line.State != PlannedState.Matched ? line with { Choice = choice } : line)] };

    /// <summary>The same in which nothing becomes anything but what the person chose: what is proposed as sure is left too.</summary>
    public StatementPlan OnlyChosen() => this with
    {
        Lines = [.. Lines.Select(line => line.Choice is null ? line with { Choice = new Proposal(LineTarget.Leave, ProposalReason.Chosen, true) } : line)],
    };

    /// <summary>What is to be taken as things stand.</summary>
    public StatementWish Wish() => new(
        [
            .. Statements.Select((statement, i) => new TakenStatement(statement.Account, statement.From!.Value, statement.To!.Value)
            {
                Opening = statement.Opening?.Amount,
                Closing = i == Statements.Length - 1 ? Closing : statement.Closing?.Amount,
                Sequence = statement.Number,
            }),
        ],
        [.. Lines.Where(line => line.State != PlannedState.Unsure || line.Effective is not null).Select(Decision)]);

    /// <summary>The book with them taken; or why they can't be.</summary>
    public Result<Book> Taken(LocalDate today) => StatementBooking.Take(Book, Wish(), today);

    private static LineDecision Decision(PlannedLine line)
    {
        TakenLine taken = new(line.Line.Date, line.Line.Amount, line.Line.Party, line.Line.Text)
        {
            BankId = line.Line.BankId,
            Mandate = PartyHabits.MandateOf(line.Line),
            WasLeft = line.WasLeft,
        };
        return line.State == PlannedState.Matched && line.Partners[0] is Partner.Entered entered ? new LineDecision(taken, [entered.Line.Number], null)
            : line.Effective is { } effective ? new LineDecision(taken, effective.Lines, effective.Lines.IsEmpty ? effective.Target : null) { Due = effective.Due, Notes = effective.Notes }
            : new LineDecision(taken, [], null);
    }

    private static ImmutableArray<PlannedLine> Numbered(ImmutableArray<PlannedLine> lines, ImmutableDictionary<string, Proposal> choices)
    {
        int number = 0;
        return
        [
            .. lines.Select(line => line.State == PlannedState.Matched ? line : line with
            {
                Number = ++number,
                Choice = choices.GetValueOrDefault(line.Key),
            }),
        ];
    }

    private static (ImmutableArray<PlannedLine> Lines, ImmutableArray<OpenPartner> Open) Planned(Book book, NewLine[] found, ImmutableArray<Statement> statements)
    {
        LocalDate first = statements[0].From!.Value;
        LocalDate last = statements.Max(statement => statement.To!.Value);
        var habits = new PartyHabits(book);
        var proposals = new Proposals(book, habits, last);
        (ImmutableArray<Partner> partners, ImmutableArray<Matching.AccountLine> entries) = BookLines.Of(book, habits, first, last);
        NewLine[] sure = [.. found.Where(line => !line.IsUnsure)];
        MatchResult match = LineMatcher.Match([.. sure.Select(line => line.Line)], entries, last);
        var byLine = new Dictionary<StatementLine, Queue<PlannedLine>>(ReferenceEqualityComparer.Instance);
        void Add(StatementLine line, PlannedState state, ImmutableArray<Partner> its, LeftoverKind looks, Proposal? proposal)
        {
            (byLine.TryGetValue(line, out Queue<PlannedLine>? queue) ? queue : byLine[line] = new()).Enqueue(new PlannedLine("", line, state, its, looks, proposal));
        }

        foreach (LineMatch one in match.Matched)
        {
            Partner partner = partners[one.Entry.Number];
            Proposal? rule = proposals.ByRule(one.Line);
            (PlannedState state, Proposal? proposal) = partner switch
            {
                Partner.Entered => (PlannedState.Matched, (Proposal?)null),
                Partner.Pay => (PlannedState.Waits, rule is null ? null : rule with { IsSure = false }),
                Partner.Due due when rule is null || rule.Target == BookLines.TargetOf(due.Line.Key.Owner) =>
                    (PlannedState.New, new Proposal(BookLines.TargetOf(due.Line.Key.Owner), ProposalReason.Due, true) { Due = due.Line.Key }),
                _ => (PlannedState.New, rule),
            };
            Add(one.Line, state, [partner], LeftoverKind.Unknown, proposal);
        }

        foreach (UnclearLine one in match.Unclear)
        {
            Add(one.Line, PlannedState.Unclear, [.. one.Candidates.Select(candidate => partners[candidate.Number])], LeftoverKind.Unknown, proposals.ByRule(one.Line));
        }

        foreach (SumProposal one in match.Sums)
        {
            ImmutableArray<Partner> its = [.. one.Entries.Select(entry => partners[entry.Number])];
            Add(one.Line, PlannedState.New, its, LeftoverKind.Unknown, new Proposal(LineTarget.Leave, ProposalReason.Sum, false) { Lines = [.. its.OfType<Partner.Entered>().Select(partner => partner.Line.Number)] });
        }

        foreach (Leftover one in match.Leftovers)
        {
            Add(one.Line, PlannedState.New, [], one.Kind, proposals.Of(one.Line, one.Kind));
        }

        return (
            [
                .. found.Select(line => line.IsUnsure
                    ? new PlannedLine(line.Key, line.Line, PlannedState.Unsure, [], LeftoverKind.Unknown, null)
                    : byLine[line.Line].Dequeue() with { Key = line.Key, WasLeft = line.WasLeft }),
            ],
            [.. match.Open.Select(open => (Open: open, Partner: partners[open.Entry.Number] as Partner.Entered)).Where(pair => pair.Partner is { IsAtBank: false })
                .Select(pair => new OpenPartner(pair.Partner!.Line, pair.Open.Age, pair.Open.IsOnItsWay))]);
    }

    private static PlanFault? Fault(Book book, Statement statement, LocalDate today)
    {
        if (statement.Currency != book.Household.Currency)
        {
            return new PlanFault.OtherCurrency(statement.Currency, book.Household.Currency);
        }

        if (statement.From is null || statement.To is null)
        {
            return new PlanFault.NoDays();
        }

        AddingUp sum = AddingUp.Of(statement);
        return sum is { Breaks: { } broken } ? new PlanFault.Breaks(statement.To.Value, broken.Place, broken.Missing)
            : sum.AddsUp == false ? new PlanFault.DoesNotAddUp(statement.To.Value, sum.Expected!.Value, statement.Closing!.Amount)
            : statement.To > today ? new PlanFault.StillToCome(statement.To.Value)
            : null;
    }
}
