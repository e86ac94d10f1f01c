using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Screens.Shell;
using Payday.Screens.Start;
using Payday.Store;
using Payday.Tests.Commands;
using Payday.Tests.Slips;
using Payday.Tests.Stored;

namespace Payday.Tests.Sentences;

/// <summary>What each field of each form says of a text that is typed into it.</summary>
public sealed class FormFaultTests
{
    private static readonly string[] Texts =
    [
        "", "x", "-1", "0", "3 3", "12,505", "0,1234567", "150", "5000", "2026-01-01", "2126-02-01", "4.5.2026", "2nd Friday", "32", "Food", "a|b|c|d|e|f|g", "a\u001bb", "a\u200Bb", new string('n', 61),
    ];

    // One of each kind, as the forms have other fields for each.
    private static readonly (string List, int[] Items)[] Items =
        [("sources", [2, 3, 4, 7]), ("bills", [2]), ("debts", [0, 1]), ("pots", [0, 4, 5, 8, 11])];

    [Fact]
    public void Type_InAHouseholdThatIsSetUp_SaysAsRecorded()
    {
        using var shell = new TestShell { Today = new(2026, 2, 6) };
        using BookStore store = BookStore.Open(shell.Data);
        string start = Path.Combine(shell.Data.Path, "start.json");
        string begun = $$"""{"parts":[],"household":{{File.ReadAllText(Household)}}}""";
        DraftWork? work = null;
        Golden.Equal("forms", Said(() => work ??= new DraftWork(store, () => shell.Today), Texts, () =>
        {
            File.WriteAllText(start, begun);
            work = null;
        }));
    }

    [Fact]
    public void Type_InAHouseholdWithHistory_SaysAsRecorded()
    {
        using var shell = new TestShell { Today = new(2026, 2, 6) };
        shell.Run("import", Household).Fine();
        shell.Run("run", "--accept", "--income", "Mill=9000").Fine();
        using BookStore store = BookStore.Open(shell.Data);
        var work = new BookWork(new BookSession(store, store.Load()!, () => shell.Today));

        Golden.Equal("forms-with-history", Said(() => work, ["-"], () => { }));
    }

    private static string Household => StoreFixture.PathOf(4, Path.Combine("..", "households", "every-kind.json"));

    private static List<string> Said(Func<SetupWork> work, string[] texts, Action anew)
    {
        var said = new List<string>();
        anew();
        foreach (string label in Labels(Settings(work())))
        {
            Say(said, "household", label, () => Settings(work()), texts, anew);
        }

        foreach ((string key, int[] items) in Items)
        {
            SetupList list = SetupList.All.Single(one => string.Equals(one.Member.ToString(), key, StringComparison.OrdinalIgnoreCase));
            foreach (int item in items)
            {
                foreach (string label in Labels(list.Form(work(), item)))
                {
                    Say(said, $"{key}[{item}]", label, () => list.Form(work(), item), texts, anew);
                }
            }
        }

        return said;
    }

    private static HouseholdForm Settings(SetupWork work) => new(work, [.. HouseholdFields.All, .. HouseholdFields.Opening(work)]);

    private static string[] Labels(IItemForm form) => [.. form.Rows.Select(row => row.Label)];

    private static void Say(List<string> said, string form, string label, Func<IItemForm> open, string[] texts, Action anew)
    {
        var faults = new List<string>();
        var taken = new List<string>();
        foreach (string text in texts)
        {
            IItemForm values = open();
            int row = values.Rows.ToList().FindIndex(one => one.Label == label);
            if (values.Rows[row].Locked is { } locked)
            {
                said.Add($"{form}, {label}: locked. {locked}");
                return;
            }

            if (values.Type(row, text) is { } fault)
            {
                faults.Add($"  '{Shown(text)}': {Shown(fault)}");
                continue;
            }

            taken.Add($"'{Shown(text)}'");
            anew();
        }

        said.AddRange([$"{form}, {label}: takes {(taken.Count == 0 ? "none of them" : string.Join(' ', taken))}", .. faults]);
    }

    private static string Shown(string text) => text.Replace(new string('n', 61), "n x 61", StringComparison.Ordinal).Replace("\u001b", "\\u001B", StringComparison.Ordinal).Replace("\u200B", "\\u200B", StringComparison.Ordinal);
}
