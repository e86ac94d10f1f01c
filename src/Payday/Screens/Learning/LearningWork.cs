using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Households;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Store.Starts;

namespace Payday.Screens.Learning;

/// <summary>The bank's files that a household is set up from, what they teach, and what of it is taken.</summary>
internal sealed class LearningWork
{
    private readonly LearningFiles files;
    private (HouseholdDraft Draft, ImmutableArray<HouseholdFinding> All)? findings;

    /// <summary>Goes on with the files that were named before.</summary>
    public LearningWork(SetupWork household)
    {
        Household = household;
        files = new LearningFiles(household);
        Find();
    }

    /// <summary>The household.</summary>
    public SetupWork Household { get; }

    /// <summary>What was found.</summary>
    public ImmutableArray<ProposedItem> Items { get; private set; } = [];

    /// <summary>The files, in the order in which they were named.</summary>
    public ImmutableArray<LearningFile> Files => files.All;

    /// <summary>What they teach; null where there is no line yet.</summary>
    public Lessons? Lessons => files.Lessons;

    /// <summary>The statements that were read.</summary>
    public IEnumerable<Statement> Statements => files.Statements;

    /// <summary>Where the lines and the household differ; nothing where it is only begun.</summary>
    public ImmutableArray<HouseholdFinding> Findings
    {
        get
        {
            if (findings is not { } known || !ReferenceEquals(known.Draft, Household.Draft))
            {
                findings = known = (Household.Draft, Lessons is { IsTooShort: false } lessons && !Household.TakesParts && HouseholdCheck.Of(Household.Draft) is { Ok: true } whole
                    ? HouseholdComparison.Of(lessons, whole.Value)
                    : []);
            }

            return known.All;
        }
    }

    /// <summary>Names a file, or all files of a folder.</summary>
    /// <returns>Why not, a sentence; null where all of it is among the files.</returns>
    public string? Add(string text)
    {
        string? fault = files.Add(text);
        Find();
        return fault;
    }

    /// <summary>Takes a file out; what was taken of it stays in the household.</summary>
    public void TakeOut(int file)
    {
        files.TakeOut(file);
        Find();
    }

    /// <summary>Answers a file's question.</summary>
    public void Answer(int file, int choice)
    {
        files.Answer(file, choice);
        Find();
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
            : Put(list.Without(Household.Draft, index), DraftPlace.Of(list.Member), left, KeptLessons.Without(this, item));
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

    private string? Put(HouseholdDraft next, DraftPlace place, StartStatements marked, Func<Household, Func<WeekRecords, WeekRecords>>? learned = null)
    {
        StartStatements before = Household.Statements;
        Household.MarkStatements(marked);
        Household.MarkLearned(learned ?? (household => KeptLessons.Of(this, household)));
        string? fault = Household.Put(next, place);
        if (fault is not null)
        {
            Household.MarkStatements(before);
        }

        return fault;
    }

    private void Find()
    {
        findings = null;
        Items = Lessons is not { IsTooShort: false } lessons ? []
            : Household.TakesParts ? HouseholdProposals.Of(lessons, UsualOfCurrency.SmallestNote(Household.Draft, lessons.Currency), Household.Today)
            : HouseholdProposals.Beside(lessons, HouseholdCheck.Of(Household.Draft).Value!);
    }
}
