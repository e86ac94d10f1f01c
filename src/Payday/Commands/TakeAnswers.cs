using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Humanizer;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.StatementTaking;
using Payday.Core.Undo;
using Payday.Files;
using Payday.Json;
using Payday.Reports;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Taking;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>What <c>payday statement</c> says of statements held against the book, and of taking them.</summary>
internal static class TakeAnswers
{
    /// <summary>Shows the plan, or takes the statements.</summary>
    public static Answer Of(BookStore store, Book book, Func<ReadingOptions, StatementInput> read, TakeInput wish, LocalDate today)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        Result<StatementRule>[] rules = [.. wish.Rules.Select(said => TakeInput.Rule(book, said))];
        if (Array.Find(rules, rule => !rule.Ok) is { Fault: { } wrong })
        {
            return Answer.Wrong(wrong, style);
        }

        Result<Money> balance = wish.Balance is { } typed ? Money.Parse(typed, book.Household.Currency, style) : default;
        if (wish.Balance is not null && !balance.Ok)
        {
            return new Answer.WrongUse($"--balance: {FaultTexts.Of(balance.Fault!, style)}");
        }

        // Rules that are given count from now on, and are kept with what is taken.
        Book ruled = rules.Aggregate(book, (one, rule) => one with { Weeks = one.Weeks.With(rule.Value!) });
        StatementInput input = read(new ReadingOptions { Currency = book.Household.Currency, Profiles = [.. book.Weeks.Readings.Select(KeptReadings.ProfileOf)] });
        if (StatementAnswers.Refusals(input) is [_, ..] refusals)
        {
            return new Answer.Refused([.. refusals, "Nothing was stored."]);
        }

        Result<StatementPlan> plan = StatementPlan.Of(ruled, [.. input.Statements], new PlanOptions { Account = wish.Account, Balance = wish.Balance is null ? null : balance.Value }, today);
        if (!plan.Ok)
        {
            string option = plan.Fault switch
            {
                PlanFault.WhichAccount => " Name the household's with --account NUMBER.",
                PlanFault.OtherAccount or PlanFault.OfACard => " If it is the household's account, name it with --account NUMBER.",
                _ => "",
            };
            return new Answer.Refused([FaultTexts.Of(plan.Fault, style) + option, "Nothing was stored."]);
        }

        Result<StatementPlan> chosen = wish.Chosen(plan.Value);
        if (!chosen.Ok)
        {
            return Answer.Wrong(chosen.Fault, style);
        }

        ImmutableArray<string> noticed = [.. input.Noticed.Select(notice => $"{notice.Path}: {Statements.Faults.FaultTexts.Of(notice.Fault)}")];
        Result<Book> taken = chosen.Value.Taken(today);
        if (!wish.Accepts)
        {
            return Shown(chosen.Value, taken, noticed, isStored: false);
        }

        if (taken is { Fault: TakingFault.AllKnown } && rules.Length == 0)
        {
            return Shown(chosen.Value, taken, noticed, isStored: false);
        }

        if (!taken.Ok && taken.Fault is not TakingFault.AllKnown)
        {
            return new Answer.Refused([Refusal(chosen.Value, taken.Fault, style), "Nothing was stored."]);
        }

        Book after = input.Profiles.Aggregate(taken.Ok ? taken.Value : ruled, (one, profile) => one with { Weeks = one.Weeks.With(KeptReadings.Of(profile)) });
        store.Save(book, after);
        return Shown(chosen.Value, taken, noticed, isStored: true);
    }

    /// <summary>Takes back the statements taken last.</summary>
    public static Answer Undo(BookStore store, Book book, LocalDate today) => TakingUndo.Last(book) is not { } last
        ? Answer.Because("No statement was taken yet.")
        : TakingUndo.InTheWay(book, last, today) is Obstacle obstacle ? UndoOption.Refused(book, obstacle)
        : UndoOption.Stored(store, book, TakingUndo.Of(book, last, today), [("statement", null, last.To)]);

    private static Answer.Done Shown(StatementPlan plan, Result<Book> taken, ImmutableArray<string> noticed, bool isStored)
    {
        Book book = plan.Book;
        NumberStyle style = book.Household.Settings.Numbers;
        string[] says = [.. Says(plan, taken, noticed)];
        return new Answer.Done(
            [
                .. Report.Heading(Title(plan), $"{DateText.Day(plan.Statements[0].From!.Value)} to {DateText.Day(plan.Last.To!.Value)}"),
                .. Lines(plan, style),
                .. says.SelectMany(Report.Prose),
                .. Report.Prose(Last(plan, taken, isStored)),
            ],
            JsonSerializer.Serialize(
                new StatementResult(
                    isStored && taken.Ok,
                    LocalDatePattern.Iso.Format(plan.Statements[0].From!.Value),
                    LocalDatePattern.Iso.Format(plan.Last.To!.Value),
                    plan.Statements[0].Opening?.Amount.ToPlain(),
                    plan.Closing?.ToPlain(),
                    plan.Known,
                    [.. plan.Matched.Select(line => Json(book, line))],
                    [.. plan.Others.Select(line => Json(book, line))],
                    [.. plan.Open.Select(open => new OpenLineResult(
                        open.Line.Number, LocalDatePattern.Iso.Format(open.Line.Date), AccountLineText.Of(book.Household, open.Line), open.Line.Amount.ToPlain(), open.IsOnItsWay))],
                    taken.Ok ? taken.Value.Weeks.Reconciliations[^1].Difference.ToPlain() : null,
                    says),
                ResultJson.Readable.StatementResult));
    }

    private static string Title(StatementPlan plan) =>
        $"{"statement".ToQuantity(plan.Statements.Length, ShowQuantityAs.None)} compared with the account".Transform(To.SentenceCase);

    private static IEnumerable<string> Lines(StatementPlan plan, NumberStyle style)
    {
        Household household = plan.Book.Household;
        string matched = "line".ToQuantity(plan.Matched.Count());
        yield return $"{matched} matched, {plan.Others.Count()} new or unclear" + (plan.Known > 0 ? $", {plan.Known} taken before" : "") + (plan.BeforeStart > 0 ? $", {plan.BeforeStart} from before the household's first day" : "") + ".";
        if (plan.Others.Any())
        {
            yield return "";
            foreach (string row in Report.Table(
                style,
                [new("", Align.Right), new("date"), Report.Names("line"), Report.Amounts("amount"), Report.Names("becomes")],
                plan.Others.Select(line => ImmutableArray.Create(
                    line.Number.ToString(CultureInfo.InvariantCulture),
                    DateText.Short(line.Line.Date),
                    PlanText.What(line.Line),
                    line.Line.Amount.ToString(style),
                    PlanText.Becomes(household, line)))))
            {
                yield return row;
            }
        }

        foreach (PlannedLine line in plan.Others.Where(line => line is { Choice: null, State: PlannedState.Unclear }))
        {
            foreach (string candidate in PlanText.Candidates(household, line))
            {
                yield return $"  {line.Number} may be {candidate}";
            }
        }

        yield return "";
    }

    private static IEnumerable<string> Says(StatementPlan plan, Result<Book> taken, ImmutableArray<string> noticed)
    {
        NumberStyle style = plan.Book.Household.Settings.Numbers;
        foreach (string notice in noticed)
        {
            yield return notice;
        }

        foreach (string gap in plan.Gaps.Select(gap => StatementTexts.Gap(gap, style)))
        {
            yield return gap;
        }

        OpenPartner[] late = [.. plan.Open.Where(open => !open.IsOnItsWay)];
        foreach (OpenPartner open in late)
        {
            yield return $"The bank doesn't show {AccountLineText.Of(plan.Book.Household, open.Line)}, {open.Line.Amount.ToString(style)}: {open.Age} days on its way.";
        }

        if (plan.Others.Any(line => line.State == PlannedState.Waits))
        {
            yield return "Pay waits for its payday: close that first, then take the statement, or leave the line and take the statement again.";
        }

        yield return taken.Ok ? Agreement(taken.Value, style) : Refusal(plan, taken.Fault, style);
    }

    private static string Agreement(Book after, NumberStyle style) => PlanText.Difference(after, style) + (after.Weeks.Reconciliations[^1].Difference.IsZero ? "" : " That stays in view.");

    private static string Refusal(StatementPlan plan, Fault fault, NumberStyle style)
    {
        string text = FaultTexts.Of(fault, style);
        return fault switch
        {
            TakingFault.NoBalance => $"{text} Say --balance AMOUNT.",
            TakingFault.AtLine at when plan.Others.FirstOrDefault(line => line.Line.Date == at.Line.Date && line.Line.Amount == at.Line.Amount && line.Line.Party == at.Line.Party && line.Line.Text == at.Line.Text) is { } line => $"Line {line.Number}: {text}",
            _ => text,
        };
    }

    private static string Last(StatementPlan plan, Result<Book> taken, bool isStored) => (taken, isStored) switch
    {
        ({ Ok: true }, true) => "Stored.",
        ({ Fault: TakingFault.AllKnown }, true) => "The rule is kept.",
        ({ Ok: true }, false) when plan.Others.Any(line => line.Effective is null && line.Choice is null) => "Say what lines become with --take N=WHAT, or leave them; take it with --accept. Nothing was stored.",
        ({ Ok: true }, false) => "Take it with --accept. Nothing was stored.",
        _ => "Nothing was stored.",
    };

    private static BankLineResult Json(Book book, PlannedLine line) => new(
        line.Number == 0 ? null : line.Number,
        LocalDatePattern.Iso.Format(line.Line.Date),
        line.Line.Amount.ToPlain(),
        CleanText.OneLine(line.Line.Party),
        CleanText.OneLine(line.Line.Text),
        line.State.ToString().ToLowerInvariant(),
        line.State == PlannedState.Matched || line.Effective is not null ? PlanText.Becomes(book.Household, line) : null,
        line.Proposal is { } proposal && proposal.Lines.IsEmpty ? TargetText.Name(book.Household, proposal.Target) : null,
        [.. line.Effective?.Lines ?? [.. line.Partners.OfType<Partner.Entered>().Select(partner => partner.Line.Number)]]);
}
