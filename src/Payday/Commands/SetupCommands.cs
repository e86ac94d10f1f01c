using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Json;
using Payday.Reports;
using Payday.Screens.Setup;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Setup.Lists;
using Payday.Store;
using Payday.Text;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>
/// <c>payday add</c>, <c>change</c>, <c>end</c>, <c>remove</c>, <c>order</c> and <c>set</c>: the household from the shell, by the
/// fields of the full screen's forms, all or nothing.
/// </summary>
internal static class SetupCommands
{
    private static readonly string[] Kinds = ["bill", "debt", "pot", "source"];

    /// <summary>All of them.</summary>
    public static IEnumerable<Command> Build(CommandShell shell) => [Add(shell), Change(shell), End(shell), Remove(shell), Order(shell), Set(shell)];

    private static PaydayCommand Add(CommandShell shell)
    {
        Argument<string> kind = Kind();
        var said = new Argument<string[]>("LINE|FIELD=VALUE") { Description = "What it is, as a line like \"Rent 1450 1st\", and what a line doesn't say as fields.", Arity = ArgumentArity.ZeroOrMore };
        var command = new PaydayCommand("add", "Add a bill, debt, pot or income source to the household.", "payday add bill \"Rent 1450 1st\" essential=yes") { kind, said };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
        {
            SetupList list = List(call.Parsed.GetRequiredValue(kind));
            var work = new StagedWork(book, shell.Today());
            string[] words = call.Parsed.GetValue(said) ?? [];
            IItemForm form = list.NewForm(work);
            string[] lines = [.. words.Where(word => word.IndexOf('=') <= 0)];
            string[] fields = [.. words.Where(word => word.IndexOf('=') > 0)];
            if (words.Length == 0 || lines.Length > 1)
            {
                return new Answer.WrongUse($"Give it as one line, like \"{list.LineExample}\", or as fields: {string.Join(", ", form.Rows.Select(row => FieldInput.Name(row.Label)))}.");
            }

            if (lines.Length == 1)
            {
                ImmutableArray<LineReading> read = list.Read(work, [CleanText.OneLine(lines[0])]);
                if (read[0].Item is not { } item || (read[0].Fault is not null && fields.Length == 0))
                {
                    return new Answer.WrongUse($"{lines[0]}: {read[0].Fault}");
                }

                _ = list.Begin(work, item);
                form = list.NewForm(work);
                fields = fields.Length > 0 ? fields : [$"name={item.Name}"];
            }

            return FieldInput.Take(form, fields) is { } fault ? new Answer.WrongUse(fault)
                : !form.IsStored ? new Answer.WrongUse($"Still to fill in: {string.Join(", ", form.Rows.Where(row => row.IsMissing).Select(row => FieldInput.Name(row.Label)))}.")
                : Stored(store, book, work, () => list.Form(work, list.Ordered(work.Draft).Max(one => one.Index)), $"The {list.Noun} is added.");
        }));
    }

    private static PaydayCommand Change(CommandShell shell)
    {
        Argument<string> kind = Kind();
        var name = new Argument<string>("NAME") { Description = "What it is called." };
        var fields = new Argument<string[]>("FIELD=VALUE") { Description = "What it is to be; nothing behind the = empties the field. None: show its fields.", Arity = ArgumentArity.ZeroOrMore };
        var command = new PaydayCommand("change", "Change fields of a bill, debt, pot or income source, or show them.", "payday change bill Rent \"changes-to=1480 from 1 Jan 2027\"") { kind, name, fields };
        return Invocation.Does(command, shell, call => call.OnBook(call.Parsed.GetValue(fields) is { Length: > 0 }, (store, book) =>
            On(book, shell, call.Parsed.GetRequiredValue(kind), call.Parsed.GetRequiredValue(name), (work, list, index) => Fields(store, book, work, () => list.Form(work, index), call.Parsed.GetValue(fields) ?? [], $"The {list.Noun} is changed."))));
    }

    private static PaydayCommand End(CommandShell shell)
    {
        Argument<string> kind = Kind();
        var name = new Argument<string>("NAME") { Description = "What it is called." };
        var date = new Argument<string>("DATE") { Description = "The last date on which it comes, or none to let it go on." };
        var command = new PaydayCommand("end", "End a bill or an income source on a date.", "payday end bill \"Storage locker\" 2026-06-30") { kind, name, date };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
            On(book, shell, call.Parsed.GetRequiredValue(kind), call.Parsed.GetRequiredValue(name), (work, list, index) =>
            {
                string last = call.Parsed.GetRequiredValue(date);
                return !list.HasEnd
                    ? new Answer.WrongUse($"A {list.Noun} has no last date. {(list.Noun == "pot" ? "One that has done what it was for is ended by payday pot POT --finished." : list.Instead)}")
                    : Fields(store, book, work, () => list.Form(work, index), [$"until={(last == "none" ? "" : last)}"], $"The {list.Noun} is changed.");
            })));
    }

    private static PaydayCommand Remove(CommandShell shell)
    {
        Argument<string> kind = Kind();
        var name = new Argument<string>("NAME") { Description = "What it is called." };
        var command = new PaydayCommand("remove", "Remove a bill, debt, pot or income source that no ledger line names.", "payday remove pot Haircuts") { kind, name };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
            On(book, shell, call.Parsed.GetRequiredValue(kind), call.Parsed.GetRequiredValue(name), (work, list, index) =>
            {
                ItemDraft item = list.Ordered(work.Draft).First(one => one.Index == index).Item;
                if (work.WhyKept(list.Member, item.Id!) is { } kept)
                {
                    return Answer.Because($"{item.Name}: {kept}");
                }

                HouseholdDraft without = list.Without(work.Draft, index);
                return work.Put(without, DraftPlace.Of(list.Member)) is { } fault ? Answer.Because(fault) : Stored(store, book, work, null, $"{item.Name} is removed.");
            })));
    }

    private static PaydayCommand Order(CommandShell shell)
    {
        Argument<string> kind = Kind();
        var name = new Argument<string>("NAME") { Description = "What it is called." };
        var place = new Argument<string>("PLACE") { Description = "Its place in the list, from 1; of pots the first is cut last." };
        var command = new PaydayCommand("order", "Give a bill, debt, pot or income source another place in its list.", "payday order pot Food 1") { kind, name, place };
        return Invocation.Does(command, shell, call => call.OnBook((store, book) =>
            On(book, shell, call.Parsed.GetRequiredValue(kind), call.Parsed.GetRequiredValue(name), (work, list, index) =>
            {
                int count = list.Ordered(work.Draft).Length;
                string text = call.Parsed.GetRequiredValue(place);
                if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int to) || to < 1 || to > count)
                {
                    return Answer.Wrong(new ArgumentFault.Of($"PLACE {text}", new ArgumentFault.NoWholeNumber(1, count)));
                }

                HouseholdDraft draft = work.Draft;
                for (int at = At(draft); at != to - 1; at = At(draft))
                {
                    ImmutableArray<(int Index, ItemDraft Item)> ordered = list.Ordered(draft);
                    int next = at < to - 1 ? at + 1 : at - 1;
                    draft = list.Exchanged(draft, ordered[at].Index, ordered[next].Index);
                }

                string id = list.Ordered(work.Draft).First(one => one.Index == index).Item.Id!;
                return work.Put(draft, DraftPlace.Of(list.Member)) is { } fault
                    ? Answer.Because(fault)
                    : Stored(store, book, work, null, $"In order: {string.Join("; ", list.Ordered(draft).Select(one => one.Item.Name))}.");

                int At(HouseholdDraft now) => list.Ordered(now).ToList().FindIndex(one => one.Item.Id == list.Ordered(work.Draft).First(first => first.Index == index).Item.Id);
            })));
    }

    private static PaydayCommand Set(CommandShell shell)
    {
        var said = new Argument<string[]>("NAME VALUE") { Description = "A setting and what it is to be, or several as NAME=VALUE; nothing behind the = empties it. None: show all.", Arity = ArgumentArity.ZeroOrMore };
        var command = new PaydayCommand("set", "Change settings of the household, or show them.", "payday set buffer-keeps 300") { said };
        return Invocation.Does(command, shell, call =>
        {
            string[] words = call.Parsed.GetValue(said) ?? [];
            string[] fields = words is [var name, var value] && !name.Contains('=', StringComparison.Ordinal) ? [$"{name}={value}"] : words;
            return call.OnBook(fields.Length > 0, (store, book) =>
            {
                var work = new StagedWork(book, shell.Today());
                return Fields(store, book, work, () => new HouseholdForm(work, [.. HouseholdFields.All, .. HouseholdFields.Opening(work)]), fields, "The household is changed.");
            });
        });
    }

    private static Answer Fields(BookStore store, Book book, StagedWork work, Func<IItemForm> form, string[] fields, string done) =>
        fields.Length == 0 ? Shown(form(), [], isStored: false)
        : FieldInput.Take(form(), fields) is { } fault ? new Answer.WrongUse(fault)
        : Stored(store, book, work, form, done);

    private static Answer Stored(BookStore store, Book book, StagedWork work, Func<IItemForm>? form, string done)
    {
        if (work.Done(out string said) is not { } changed)
        {
            return Answer.Because(said);
        }

        store.Save(book, changed);
        string[] told = [done, .. book.Draft is not null && changed.Draft is null ? ["The payday begun is no payday any more, and was dropped."] : Array.Empty<string>()];
        return form is null
            ? new Answer.Done([.. told.SelectMany(Report.Prose)], JsonSerializer.Serialize(new SetupResult(true, new Dictionary<string, string>(), told), ResultJson.Readable.SetupResult))
            : Shown(form(), told, isStored: true);
    }

    private static Answer.Done Shown(IItemForm form, string[] told, bool isStored) => new(
        [
            .. Report.Table(
                default,
                [new("Field"), Report.Names("") with { Shrinks = true }],
                form.Rows.Select(row => ImmutableArray.Create(FieldInput.Name(row.Label), CleanText.OneLine(row.Shown.Length > 0 ? row.Shown : "-")))),
            .. told.Length > 0 ? [""] : Array.Empty<string>(),
            .. told.SelectMany(Report.Prose),
        ],
        JsonSerializer.Serialize(
            new SetupResult(isStored, form.Rows.ToDictionary(row => FieldInput.Name(row.Label), row => row.Typed.Length > 0 ? row.Typed : row.Shown), told), ResultJson.Readable.SetupResult));

    private static Answer On(Book book, CommandShell shell, string kind, string name, Func<StagedWork, SetupList, int, Answer> work)
    {
        SetupList list = List(kind);
        var staged = new StagedWork(book, shell.Today());
        Result<int> index = NamedInput.Alone(kind, name).Among(list.Ordered(staged.Draft).Select(one => (one.Index, one.Item.Name!, one.Item.Id!)), list.Noun);
        return index.Ok ? work(staged, list, index.Value) : Answer.Wrong(index.Fault, staged.Style);
    }

    private static Argument<string> Kind()
    {
        var kind = new Argument<string>("KIND") { Description = "bill, debt, pot or source." };
        kind.LimitTo(Kinds);
        return kind;
    }

    private static SetupList List(string kind) => SetupList.All.Single(list => list.Noun == kind || (kind == "source" && list.Member == HouseholdDraft.Members.Sources));
}
