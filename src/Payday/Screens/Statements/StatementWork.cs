using System.Collections.Immutable;
using System.Globalization;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Files;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Statements.Files;
using Payday.Statements.Taking;
using Payday.Texts;

namespace Payday.Screens.Statements;

/// <summary>Statements that are being taken: which files, what was answered, what each line is to become. All of it is kept in the book until it is taken.</summary>
internal sealed class StatementWork
{
    private const string Answers = "answers";
    private const string Account = "account";
    private const string Balance = "balance";
    private const string Path = "path ";
    private const string Line = "line ";
    private const char Comma = ',';

    private readonly BookSession session;
    private readonly KeptForm form;
    private StatementInput? input;
    private (Book Book, Result<StatementPlan> Plan)? planned;
    private (StatementPlan Plan, Result<Book> After)? tried;

    public StatementWork(BookSession session)
    {
        this.session = session;
        form = new KeptForm(session, "statement");
    }

    /// <summary>Whether a file was named.</summary>
    public bool IsBegun => Paths.Length > 0;

    /// <summary>The files that were named.</summary>
    public ImmutableArray<string> Paths => [.. Enumerable.Range(1, MostFiles).Select(i => form[PathField(i)]).OfType<string>()];

    /// <summary>How many files can be read at once.</summary>
    public static int MostFiles => 12;

    /// <summary>What was read of them.</summary>
    public StatementInput Input => input ??= StatementInput.Read(
        Paths,
        path => InputFile.Bytes(path, StatementInput.MostBytes),
        new ReadingOptions
        {
            Currency = session.Book.Household.Currency,
            Today = session.Today,
            Profiles = [.. session.Book.Weeks.Readings.Select(KeptReadings.ProfileOf)],
        },
        [.. (form[Answers] ?? "").Split(Comma, StringSplitOptions.RemoveEmptyEntries).Select(answer => int.Parse(answer, NumberStyles.None, CultureInfo.InvariantCulture))]);

    /// <summary>The statements held against the book, with what was chosen so far; or why they can't be. Null where the files can't be read, or ask first.</summary>
    public Result<StatementPlan>? Plan
    {
        get
        {
            if (!IsBegun || !Input.Refused.IsEmpty || Input.Question is not null || Input.Broken.Any() || !Input.Statements.Any())
            {
                return null;
            }

            if (planned is { } made && ReferenceEquals(made.Book, session.Book))
            {
                return made.Plan;
            }

            planned = (session.Book, StatementPlan.Of(session.Book, [.. Input.Statements], Options(), session.Today));
            return planned.Value.Plan;
        }
    }

    /// <summary>The book with them taken as things stand; or why they can't be.</summary>
    public Result<Book> Taken(StatementPlan plan)
    {
        if (tried is not { } made || !ReferenceEquals(made.Plan, plan))
        {
            tried = made = (plan, plan.OnlyChosen().Taken(session.Today));
        }

        return made.After;
    }

    /// <summary>Adds a file, or all of a folder.</summary>
    /// <returns>What is wrong with the path, a sentence; or null.</returns>
    public string? Add(string typed)
    {
        Result<ImmutableArray<string>> named = BankPaths.Of(typed);
        if (!named.Ok)
        {
            return FaultTexts.Of(named.Fault);
        }

        string[] added = [.. named.Value.Except(Paths)];
        if (added.Length == 0)
        {
            return "That is among the files already.";
        }

        if (Paths.Length + added.Length > MostFiles)
        {
            return $"That would be more than {MostFiles} files.";
        }

        // What isn't there at all is said at once; what is in it once it is read.
        if (added is [var only] && InputFile.Bytes(only, StatementInput.MostBytes) is { Ok: false } no)
        {
            return FaultTexts.Of(no.Fault);
        }

        int there = Paths.Length;
        form.Keep(added.Select((path, i) => (PathField(there + i + 1), (string?)path)));
        input = null;
        planned = null;
        return null;
    }

    /// <summary>Answers what a file asks first, by the number of the answer.</summary>
    public void Answer(int number) => Keep((Answers, (form[Answers] is { Length: > 0 } before ? before + Comma : "") + number.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Says which account is the household's.</summary>
    public void Choose(string account) => Keep((Account, account));

    /// <summary>Says the bank's balance after the last line.</summary>
    public void Say(Money balance) => Keep((Balance, balance.MinorUnits.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Says what lines are to become; null takes it back.</summary>
    public void Choose(params IEnumerable<(PlannedLine Line, Proposal? Choice)> choices) =>
        form.Keep(choices.Select(one => (Line + one.Line.Key, one.Choice is { } choice ? ChoiceText.Of(choice) : null)));

    /// <summary>Forgets the files and all that was chosen.</summary>
    public void Forget()
    {
        form.Forget();
        input = null;
    }

    /// <summary>Stores a book in which they are taken, with how their files are read, and forgets what was chosen in the same step.</summary>
    public void Done(Book after)
    {
        form.Done(Input.Profiles.Aggregate(after, (book, profile) => book with { Weeks = book.Weeks.With(KeptReadings.Of(profile)) }));
        input = null;
    }

    private static string PathField(int number) => Path + number.ToString("00", CultureInfo.InvariantCulture);

    private PlanOptions Options() => new()
    {
        Account = form[Account],
        Balance = form[Balance] is { } balance ? Money.FromMinorUnits(long.Parse(balance, CultureInfo.InvariantCulture), session.Book.Household.Currency) : null,
        Choices = (session.Book.Weeks.FormOf("statement")?.Texts ?? ImmutableSortedDictionary<string, string>.Empty)
            .Where(text => text.Key.StartsWith(Line, StringComparison.Ordinal))
            .Select(text => (Key: text.Key[Line.Length..], Choice: ChoiceText.In(text.Value)))
            .Where(pair => pair.Choice is not null)
            .ToImmutableDictionary(pair => pair.Key, pair => pair.Choice!),
    };

    private void Keep((string Field, string? Text) typed)
    {
        form.Keep([typed]);
        input = null;
    }
}
