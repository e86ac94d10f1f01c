using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Files;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Statements.Files;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Statements.Taking;
using Payday.Store.Starts;
using Payday.Texts;

namespace Payday.Screens.Learning;

/// <summary>The bank's files that a household is set up from, what they teach, and what of it is taken.</summary>
internal sealed class LearningWork
{
    private const int MostBytes = 16 * 1024 * 1024;
    private const int MostFiles = 200;

    private readonly Dictionary<string, Result<byte[]>> bytes = new(StringComparer.Ordinal);

    /// <summary>Goes on with the files that were named before.</summary>
    public LearningWork(SetupWork household)
    {
        Household = household;
        Files = [];
        Read();
    }

    /// <summary>The household.</summary>
    public SetupWork Household { get; }

    /// <summary>The files, in the order in which they were named.</summary>
    public ImmutableArray<LearningFile> Files { get; private set; }

    /// <summary>What they teach; null where there is no line yet.</summary>
    public Lessons? Lessons { get; private set; }

    /// <summary>What was found.</summary>
    public ImmutableArray<ProposedItem> Items { get; private set; } = [];

    /// <summary>The statements that were read.</summary>
    public IEnumerable<Statement> Statements => Files.SelectMany(file => file.Found.Statements);

    /// <summary>Names a file, or all files of a folder.</summary>
    /// <returns>Why not, a sentence; null where all of it is among the files.</returns>
    public string? Add(string text)
    {
        IReadOnlyList<string> paths = PersonPath.Files(PersonPath.Full(text));
        StartStatements kept = Household.Statements;
        string[] added = [.. paths.Where(path => kept.Files.All(file => file.Path != path))];
        if (added.Length == 0)
        {
            return paths.Count == 0 ? "There is no file in that folder." : "That is among the files already.";
        }

        if (kept.Files.Length + added.Length > MostFiles)
        {
            return $"That would be more than {MostFiles} files.";
        }

        // One file that isn't there is a slip of the fingers; of a folder each says for itself what is wrong.
        if (paths.Count == 1 && Bytes(paths[0]) is { Ok: false } no)
        {
            bytes.Remove(paths[0]);
            return FaultTexts.Of(no.Fault);
        }

        Household.KeepStatements(kept with { Files = kept.Files.AddRange(added.Select(path => new StartStatement(path, []))) });
        Read();
        return null;
    }

    /// <summary>Takes a file out; what was taken of it stays in the household.</summary>
    public void TakeOut(int file)
    {
        StartStatements kept = Household.Statements;
        bytes.Remove(kept.Files[file].Path);
        Household.KeepStatements(kept with { Files = kept.Files.RemoveAt(file) });
        Read();
    }

    /// <summary>Answers a file's question.</summary>
    public void Answer(int file, int choice)
    {
        StartStatements kept = Household.Statements;
        StartStatement one = kept.Files[file];
        Household.KeepStatements(kept with { Files = kept.Files.SetItem(file, one with { Answers = one.Answers.Add(choice) }) });
        Read();
    }

    /// <summary>What became of something.</summary>
    public ItemState StateOf(ProposedItem item) =>
        Household.Statements.Taken.Contains(item.Key) ? ItemState.Taken : Household.Statements.Left.Contains(item.Key) ? ItemState.Left : ItemState.Open;

    /// <summary>The list that something belongs in; null for what is in the account.</summary>
    public static SetupList? ListOf(ProposedItem item) => item switch
    {
        ProposedItem.Source or ProposedItem.NewAmount { Series.IsIncome: true } => Of(HouseholdDraft.Members.Sources),
        ProposedItem.Bill or ProposedItem.NewAmount => Of(HouseholdDraft.Members.Bills),
        ProposedItem.Pot => Of(HouseholdDraft.Members.Pots),
        _ => null,
    };

    /// <summary>The list of debts.</summary>
    public static SetupList Debts => Of(HouseholdDraft.Members.Debts);

    /// <summary>Where something that was taken stands, whatever its name is by now: its list and its place there; null where it was taken out.</summary>
    public (SetupList List, int Index)? PlaceOf(ProposedItem item)
    {
        SetupList[] lists = ListOf(item) is not { } list ? [] : item is ProposedItem.Bill ? [list, Debts] : [list];
        foreach (SetupList one in lists)
        {
            foreach ((int index, ItemDraft there) in one.Ordered(Household.Draft))
            {
                if (there.Id is { } id && id == item.Id)
                {
                    return (one, index);
                }
            }
        }

        return null;
    }

    /// <summary>Whether it is a debt that was begun and isn't whole yet.</summary>
    public bool IsBegun(ProposedItem item) => item is ProposedItem.Bill && Household.Begun.Debt?.Id is { } id && id == item.Id;

    /// <summary>What it is called now.</summary>
    public string NameOf(ProposedItem item) => StateOf(item) == ItemState.Taken && PlaceOf(item) is var (list, index)
        ? list.Ordered(Household.Draft).First(one => one.Index == index).Item.Name ?? item.Name
        : item.Name;

    /// <summary>Whether what was found as a bill was taken as a debt: it is then none of the household's bills.</summary>
    public bool IsDebt(ProposedItem.Bill item) => Household.Statements.Debts.Contains(item.Key);

    /// <summary>What is kept of the files beside the household: rules for lines like those that were taken, and how each bank's CSV is read.</summary>
    /// <param name="household">The household, with what was taken in it.</param>
    public Func<WeekRecords, WeekRecords> Learned(Household household)
    {
        ImmutableArray<StatementRule> rules = Lessons is { IsTooShort: false } lessons && lessons.Currency == household.Currency
            ? LearnedRules.Of(lessons, household, Items.Where(item => StateOf(item) == ItemState.Taken))
            : [];
        KeptReading[] readings = [.. Files.Select(file => file.Found.Profile).OfType<CsvProfile>().Select(KeptReadings.Of)];
        return weeks => rules.Where(rule => weeks.StatementRules.All(kept => kept.Words != rule.Words)).Aggregate(readings.Aggregate(weeks, (with, reading) => with.With(reading)), (with, rule) => with.With(rule));
    }

    /// <summary>Takes something into the household; in the same write it is marked as taken.</summary>
    /// <returns>Why not, a sentence, or null.</returns>
    public string? Take(ProposedItem item)
    {
        if (Prepared() is not { } draft)
        {
            return OtherCurrency;
        }

        HouseholdDraft next = item.In(draft);
        DraftPlace place = ListOf(item) is not { } list ? DraftPlace.Of(HouseholdDraft.Members.Opening)
            : item is ProposedItem.NewAmount ? DraftPlace.Of(list.Member)
            : DraftPlace.Of(list.Member, list.Ordered(next).Length - 1);
        return Put(next, place, Household.Statements.Take(item.Key));
    }

    /// <summary>Begins a debt of a bill's lines: what is owed is for the person to type.</summary>
    /// <returns>Why not, a sentence, or null.</returns>
    public string? TakeAsDebt(ProposedItem.Bill item)
    {
        if (Prepared() is not { } draft)
        {
            return OtherCurrency;
        }

        if (!ReferenceEquals(draft, Household.Draft) && Put(draft, DraftPlace.Whole, Household.Statements) is { } fault)
        {
            return fault;
        }

        if (Debts.Begin(Household, item.AsDebt) is { } refusal)
        {
            return refusal;
        }

        Household.KeepStatements(Household.Statements.TakeAsDebt(item.Key));
        return null;
    }

    /// <summary>Leaves something out; what was taken of it is taken out of the household again.</summary>
    /// <returns>Why not, a sentence, or null.</returns>
    public string? Leave(ProposedItem item)
    {
        StartStatements left = StateOf(item) == ItemState.Taken ? Household.Statements.Reopen(item.Key) : Household.Statements.Leave(item.Key);
        if (StateOf(item) != ItemState.Taken)
        {
            Household.KeepStatements(left);
            return null;
        }

        if (item is ProposedItem.Account)
        {
            HouseholdDraft without = Household.Draft with { Start = Household.Today, Opening = (Household.Draft.Opening ?? new()) with { Account = 0 } };
            return Put(without, DraftPlace.Of(HouseholdDraft.Members.Opening), left);
        }

        if (item is ProposedItem.NewAmount amount)
        {
            return Put(amount.OutOf(Household.Draft), DraftPlace.Of(ListOf(item)!.Member), left);
        }

        if (PlaceOf(item) is not var (list, index))
        {
            if (IsBegun(item))
            {
                Household.KeepBegun(Household.Begun with { Debt = null });
            }

            Household.KeepStatements(left);
            return null;
        }

        return list.Ordered(Household.Draft).First(one => one.Index == index).Item.Id is { } id && Household.WhyKept(list.Member, id) is { } why
            ? why
            : Put(list.Without(Household.Draft, index), DraftPlace.Of(list.Member), left, Forgotten(item));
    }

    private string OtherCurrency => $"The household is in {Household.Draft.Settings.Currency}, these statements in {Lessons!.Currency}: nothing of them fits.";

    private static SetupList Of(DraftMember member) => SetupList.All.First(list => list.Member == member);

    // Amounts need a currency: that of the statements is taken with the first of them.
    private HouseholdDraft? Prepared()
    {
        HouseholdDraft draft = Household.Draft;
        Currency currency = Lessons!.Currency;
        return draft.Settings.Currency is { } there
            ? there == currency ? draft : null
            : UsualOfCurrency.Put(draft with { Settings = draft.Settings with { Currency = currency } });
    }

    // The rule that was kept with something goes with it, where it is as it was.
    private Func<Household, Func<WeekRecords, WeekRecords>> Forgotten(ProposedItem item)
    {
        ImmutableArray<StatementRule> rules = HouseholdCheck.Of(Household.Draft) is { Ok: true } whole ? LearnedRules.Of(Lessons!, whole.Value, [item]) : [];
        return _ => weeks => weeks with { StatementRules = [.. weeks.StatementRules.Except(rules)] };
    }

    private string? Put(HouseholdDraft next, DraftPlace place, StartStatements marked, Func<Household, Func<WeekRecords, WeekRecords>>? learned = null)
    {
        StartStatements before = Household.Statements;
        Household.MarkStatements(marked);
        Household.MarkLearned(learned ?? Learned);
        string? fault = Household.Put(next, place);
        if (fault is not null)
        {
            Household.MarkStatements(before);
        }

        return fault;
    }

    private Result<byte[]> Bytes(string path)
    {
        if (!bytes.TryGetValue(path, out Result<byte[]> known))
        {
            known = InputFile.Bytes(path, MostBytes);
            bytes[path] = known;
        }

        return known;
    }

    private void Read()
    {
        ImmutableArray<StartStatement> kept = Household.Statements.Files;
        Result<byte[]>[] read = [.. kept.Select(file => Bytes(file.Path))];
        int[] there = [.. Enumerable.Range(0, kept.Length).Where(i => read[i].Ok)];
        ImmutableArray<StatementFile> found = StatementSet.Read(
            [.. there.Select(i => ((ReadOnlyMemory<byte>)read[i].Value!, kept[i].Answers))],
            new ReadingOptions { Currency = Household.Draft.Settings.Currency, Today = Household.Today, Profiles = Household.Readings });
        var nothing = new StatementFile([], []);
        Files =
        [
            .. kept.Select((file, i) => new LearningFile(
                file,
                read[i].Ok ? null : FaultTexts.Of(read[i].Fault!),
                read[i].Ok ? found[Array.IndexOf(there, i)] : nothing)),
        ];
        Lessons = LessonFinder.Of(Statements, Household.Draft.Settings.Currency);
        Items = Lessons is not { IsTooShort: false } lessons ? []
            : Household.TakesParts ? HouseholdProposals.Of(lessons, UsualOfCurrency.SmallestNote(Household.Draft, lessons.Currency), Household.Today)
            : HouseholdProposals.Beside(lessons, HouseholdCheck.Of(Household.Draft).Value!);
    }
}
