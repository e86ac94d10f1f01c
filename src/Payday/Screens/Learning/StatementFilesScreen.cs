using System.Collections.Immutable;
using Humanizer;
using Payday.Reports;
using Payday.Screens.Asking;
using Payday.Screens.Frames;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Shell;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Text;
using Payday.Texts;
using Terminal.Gui.Input;

namespace Payday.Screens.Learning;

/// <summary>Which files of the bank are read, and what each of them says.</summary>
internal sealed class StatementFilesScreen : CursorScreen
{
    private readonly LearningWork work;
    private readonly Onward onward;
    private readonly PathsAsked paths;

    /// <summary>Goes on with the files that were named before.</summary>
    /// <param name="household">The household.</param>
    /// <param name="onward">Where Right leads once what was found has been gone through.</param>
    public StatementFilesScreen(SetupWork household, Onward onward)
        : this(new LearningWork(household), onward)
    {
    }

    /// <inheritdoc cref="StatementFilesScreen(SetupWork, Onward)"/>
    public StatementFilesScreen(LearningWork work, Onward onward)
    {
        (this.work, this.onward) = (work, onward);
        paths = new PathsAsked(work.Add, () => Cursor = Math.Max(0, Count - 1));
    }

    /// <inheritdoc/>
    public override string Title => "Bank statements";

    /// <inheritdoc/>
    public override IReadOnlyList<(string Word, string Meaning)> Words =>
    [
        ("Adds up", "the opening balance and all lines come to the closing balance."),
        ("Formats", "CSV of any bank, OFX, camt.053, camt.052 and MT940; nothing else has to be said of them."),
        .. SetupWords.All,
    ];

    /// <inheritdoc/>
    protected override string Aside => work.Lessons is { } lessons ? $"{DateText.Day(lessons.Span.Start)} to {DateText.Day(lessons.Span.End)}" : "";

    /// <inheritdoc/>
    protected override int Count => work.Files.Length;

    /// <inheritdoc/>
    protected override IReadOnlyList<Binding> Keys =>
    [
        Count == 0 ? new(Key.Enter, "Enter", "path", "The path of a file, or of a folder with files.", Add)
        : Here.Question is not null ? new(Key.Enter, "Enter", "answer", "Say what this file leaves open.", Ask)
        : new(Key.Enter, "Enter", "what it says", "All that is said of this file.", () => new Way.To(new FileSaysScreen(Here.Name, [.. Sentences(Here)]))),
        Letters.Add.Does("add", "Another file, or a folder with files; Enter alone ends. Paths can be pasted too.", Add),
        .. Count == 0 ? Array.Empty<Binding>() : [Letters.TakeOut.Does("remove", "Remove this file; what was taken of it into the household stays there.", TakeOut)],
        new(Key.CursorRight, "Right", "what was found", "On to what was found in the files.", Next),
    ];

    /// <inheritdoc/>
    protected override string Empty =>
        "No file yet: Enter asks for the path of one from your bank, or of a folder with some, such as ~/statements. Three months to two years of lines show bills, pay and spending.";

    /// <inheritdoc/>
    protected override string Detail => Count == 0
        ? "The files are only read, here and nowhere else. Nothing of them is in your household before you take it, line by line."
        : string.Join(' ', Sentences(Here));

    /// <inheritdoc/>
    protected override string Status => work.Files.Count(file => file.IsOpen) is > 0 and var open
        ? $"{"file".ToQuantity(open)} {(open == 1 ? "says" : "say")} nothing yet: ! marks {(open == 1 ? "it" : "them")}."
        : work.Lessons is { IsTooShort: true } few ? LearningTexts.TooShort(few) is var text && TextColumns.Width(text) < 76 ? text : "Habits show from three months on: a adds earlier files."
        : StatementChain.Of(work.Statements).FirstOrDefault(step => step.Link == ChainLink.Missing) is { } gap ? StatementTexts.Gap(gap, work.Household.Style)
        : "";

    private LearningFile Here => work.Files[Math.Clamp(Cursor, 0, Count - 1)];

    /// <inheritdoc/>
    public override bool Pasted(string text)
    {
        Message = paths.Pasted(text) ?? Message;
        return text.Trim().Length > 0;
    }

    /// <inheritdoc/>
    protected override (ImmutableArray<string> Header, IReadOnlyList<string> Rows) Table(int width)
    {
        TextTableLines lines = new TextTable(
            [Report.Names("File"), new("from"), new("to"), new("lines", Align.Right), new("") { Drops = 1 }],
            [.. work.Files.Select(Cells)],
            [],
            decimalMark: "").Lay(width);
        return ([.. lines.Header.Take(1)], lines.Rows);
    }

    /// <inheritdoc/>
    protected override (char Sign, Ink Ink) Mark(int row) => work.Files[row] switch
    {
        { IsOpen: true } => ('!', Ink.Alert),
        { Found.Statements: var statements } when statements.Any(statement => AddingUp.Of(statement).AddsUp == false) => ('!', Ink.Alert),
        _ => (RowSigns.Done, Ink.Done),
    };

    private static ImmutableArray<string> Cells(LearningFile file)
    {
        ImmutableArray<Statement> statements = file.Found.Statements;
        string what = file.Question is not null ? "asks something"
            : file.IsOpen ? "can't be read"
            : statements.All(statement => AddingUp.Of(statement).AddsUp == true) ? "adds up"
            : statements.Any(statement => AddingUp.Of(statement).AddsUp == false) ? "doesn't add up"
            : "no balances";
        return
        [
            CleanText.OneLine(file.Name),
            statements.Min(statement => statement.From) is { } from ? DateText.Day(from) : "",
            statements.Max(statement => statement.To) is { } to ? DateText.Day(to) : "",
            statements.IsEmpty ? "" : statements.Sum(statement => statement.Lines.Length).ToString(System.Globalization.CultureInfo.InvariantCulture),
            what,
        ];
    }

    private IEnumerable<string> Sentences(LearningFile file)
    {
        if (file.Hindrance is { } hindrance)
        {
            yield return hindrance;
        }

        if (file.Question is { } question)
        {
            yield return $"Line {question.Line} doesn't say {StatementTexts.Asked(question.Kind)}: {CleanText.OneLine(question.Written)}";
        }

        foreach (Statement statement in file.Found.Statements)
        {
            yield return $"{statement.Currency}: {"booked line".ToQuantity(statement.Lines.Length)}. {StatementTexts.AddsUp(statement, work.Household.Style)}";
        }

        foreach (StatementFault fault in file.Found.Faults)
        {
            yield return Payday.Statements.Faults.FaultTexts.Of(fault);
        }
    }

    private Way Add() => new Way.Edit(paths.Several(isFirst: Count == 0));

    private Way Ask()
    {
        int at = Math.Clamp(Cursor, 0, Count - 1);
        CsvQuestion question = Here.Question!;
        return new Way.To(new PickScreen<int>(
            $"Line {question.Line} of {CleanText.OneLine(Here.Name)}: {CleanText.OneLine(question.Written)}",
            [.. question.Choices.Select((choice, i) => new PickItem<int>(i, CleanText.OneLine(choice.Reads), ""))],
            0,
            choice =>
            {
                work.Answer(at, choice);
                return Way.Back;
            })
        {
            Asked = $"The file doesn't say {StatementTexts.Asked(question.Kind)}. How is it meant?",
        });
    }

    private Way TakeOut()
    {
        work.TakeOut(Math.Clamp(Cursor, 0, Count - 1));
        return Way.Stay;
    }

    private Way Next()
    {
        if (work.Lessons is { IsTooShort: false })
        {
            return new Way.Instead(new FoundScreen(work, onward));
        }

        Message = work.Lessons is { } lessons ? LearningTexts.TooShort(lessons)
            : Count == 0 ? "No file yet: Enter asks for a path."
            : work.Household.Draft.Settings.Currency is { } currency && work.Statements.Any(statement => statement.Currency != currency) ? $"The household is in {currency}, and these files have no line in it."
            : "These files have no booked line yet.";
        return Way.Stay;
    }
}
