using System.Buffers;
using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Files;
using Payday.Json;
using Payday.Reports;
using Payday.Statements.Files;
using Payday.Statements.Habits;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Statements.Taking;
using Payday.Store;
using Payday.Store.Files;
using Payday.Store.HouseholdFiles;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday learn</c>: what a bank's files say of bills, pay and spending. It changes nothing; a household that is there is only looked at.</summary>
internal static class LearnCommand
{
    private const int MostChoices = 20;

    public static Command Build(CommandShell shell)
    {
        var files = new Argument<string[]>("FILE") { Description = "Files from the bank of 3 to 24 months: CSV, OFX, camt.053, camt.052 or MT940.", Arity = ArgumentArity.OneOrMore };
        var currency = new Option<string>("--currency") { Description = "The accounts' currency, where a file names none. Default: the household's, where one is there.", HelpName = "CODE" };
        Option<int[]> choose = OptionValues.Counts("--choose", "The reading to take where a file leaves more than one: its number. Once more for each further question.", 1, MostChoices, "N");
        var command = new PaydayCommand(
            "learn",
            "Learn from bank statements: bills and pay that come round, what changed, what is usually spent, and where the household differs. Nothing is stored.",
            "payday learn january.csv february.csv march.csv") { files, currency, choose };
        return Invocation.Does(command, shell, call => Learn(
            call, call.Parsed.GetRequiredValue(files), call.Parsed.GetValue(currency), call.Parsed.GetValue(choose) ?? []));
    }

    private static Answer Learn(Invocation call, string[] paths, string? code, int[] choices)
    {
        if (code is not null && !Currency.KnownCodes.Contains(code))
        {
            return new Answer.WrongUse($"--currency {code}: that is no currency known here; write one of {string.Join(", ", Currency.KnownCodes)}.");
        }

        var notes = new List<string>();
        Book? book = Look(call, notes);
        Currency? currency = code is null ? book?.Household.Currency : Currency.FromCode(code);
        var options = new ReadingOptions
        {
            Currency = currency,
            Today = call.Shell.Today(),
            Profiles = [.. (book?.Weeks.Readings ?? []).Select(KeptReadings.ProfileOf)],
        };
        var input = StatementInput.Read(paths, path => CommandInput.Bytes(call.Shell, path, StatementInput.MostBytes), options, choices);
        if (StatementAnswers.Refusals(input) is [_, ..] refusals)
        {
            return new Answer.Refused(refusals);
        }

        Statement[] statements = [.. input.Statements];
        PotLabels? labels = book is null ? null : new PotLabels(book);
        NumberStyle style = book?.Household.Settings.Numbers ?? NumberStyle.CommaPoint;
        Lessons? lessons = LessonFinder.Of(statements, currency, labels is null ? null : labels.Of);
        if (lessons is null)
        {
            return Answer.Because(currency is { } wanted ? $"There is no booked line in {wanted} in these files." : "There is no booked line in these files.");
        }

        if (lessons.IsTooShort)
        {
            return Answer.Because(LearningTexts.TooShort(lessons));
        }

        ImmutableArray<HouseholdFinding>? findings = book is not null && book.Household.Currency == lessons.Currency ? HouseholdComparison.Of(lessons, book.Household) : null;
        return new Answer.Done(
            [
                .. LearningReport.Lines(lessons, style),
                .. findings is { } differences ? ["", .. Household(book!, differences, style)] : ImmutableArray<string>.Empty,
                "",
                .. Doubts(input, style).Concat(LearningTexts.Left(lessons)).Concat(notes).SelectMany(Report.Prose),
                "All of this is only what the lines look like. Nothing was stored.",
            ],
            JsonSerializer.Serialize(Json(lessons, findings), ResultJson.Readable.LearningResult));
    }

    // It is looked at without opening it: nothing is mended, locked or brought over to another version for a question.
    private static Book? Look(Invocation call, List<string> notes)
    {
        if (!call.Folder.HasBook)
        {
            return null;
        }

        try
        {
            return BookStore.Peek(call.Folder).Book;
        }
        catch (StoreException fault)
        {
            notes.Add($"The household isn't compared: {CommandLine.Sentence(fault)}");
            return null;
        }
    }

    // What doesn't add up, and what is missing in between, makes all the rest less sure: it is said with its file.
    private static IEnumerable<string> Doubts(StatementInput input, NumberStyle style) =>
    [
        .. input.Files.SelectMany(file => file.File.Statements
            .Where(statement => AddingUp.Of(statement).AddsUp == false)
            .Select(statement => $"{file.Path}: {StatementTexts.AddsUp(statement, style)}")),
        .. StatementChain.Of(input.Statements).Where(step => step.Link == ChainLink.Missing).Select(step => StatementTexts.Gap(step, style)),
    ];

    private static IEnumerable<string> Household(Book book, ImmutableArray<HouseholdFinding> findings, NumberStyle style) =>
    [
        $"Beside the household {CleanText.OneLine(book.Household.Name)}:",
        .. findings.IsEmpty ? ["  No difference that is sure."] : findings.SelectMany(finding => Report.Prose("  " + LearningTexts.Of(finding, style))),
    ];

    private static LearningResult Json(Lessons lessons, ImmutableArray<HouseholdFinding>? findings) => new(
        lessons.Currency.Code,
        Iso(lessons.Span.Start),
        Iso(lessons.Span.End),
        lessons.Histories.Length,
        lessons.Lines,
        [.. lessons.Incomes.Select(Json)],
        [.. lessons.Bills.Select(Json)],
        [.. lessons.Habits.Select(habit => new HabitResult(CleanText.OneLine(habit.Name), Json(habit.PerWeek), Json(habit.PerMonth), habit.Total.ToPlain(), habit.Lines.Length))],
        [.. lessons.Months.Select(month => new MonthFlowResult(YearMonthPattern.Iso.Format(month.Month), month.In.ToPlain(), month.Out.ToPlain()))],
        findings is { } there ? [.. there.Select(Json)] : null);

    private static SeriesResult Json(Recurring series) => new(
        CleanText.OneLine(series.Name),
        Schedule(series),
        series.UsualSize.ToPlain(),
        series.HoldSize.ToPlain(),
        series.Lines.Length,
        series.Expected,
        Iso(series.First),
        Iso(series.Last),
        [
            .. series.Changes.Select(change => change.Kind == RecurringChangeKind.Stopped
                ? new SeriesChangeResult("stopped", Iso(change.Since), null)
                : new SeriesChangeResult("amount", Iso(change.Since), change.Difference.ToPlain())),
        ]);

    private static JsonElement Schedule(Recurring series)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes))
        {
            ScheduleFormat.Value.Write(json, ScheduleDraft.Of(series.Rhythm.ToSchedule()), series.Usual.Currency);
        }

        using var document = JsonDocument.Parse(bytes.WrittenMemory);
        return document.RootElement.Clone();
    }

    private static UsualResult? Json(SpendingSummary? spent) =>
        spent is null ? null : new(spent.Median.ToPlain(), spent.Low.ToPlain(), spent.High.ToPlain(), spent.Periods);

    private static HouseholdFindingResult Json(HouseholdFinding finding) => finding switch
    {
        HouseholdFinding.NotThere notThere => new("notThere", CleanText.OneLine(notThere.Name), null, notThere.Series.UsualSize.ToPlain(), null),
        HouseholdFinding.OtherAmount other => new("otherAmount", CleanText.OneLine(other.Name), other.Here.ToPlain(), other.Found.ToPlain(), other.Since is { } since ? Iso(since) : null),
        HouseholdFinding.NoLine noLine => new("noLine", CleanText.OneLine(noLine.Name), null, null, noLine.Last is { } last ? Iso(last) : null),
        _ => throw new ArgumentOutOfRangeException(nameof(finding)),
    };

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
