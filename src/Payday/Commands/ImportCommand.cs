using System.CommandLine;
using System.Text.Json;
using Payday.Core.Households;
using Payday.Json;
using Payday.Store;
using Payday.Store.HouseholdFiles;

namespace Payday.Commands;

/// <summary><c>payday import</c>: a household file into the data folder.</summary>
internal static class ImportCommand
{
    public static Command Build(CommandShell shell)
    {
        var file = new Argument<string>("FILE") { Description = "The household file, - for standard input." };
        var command = new PaydayCommand(
            "import",
            "Take a household file into the data folder: a new household, or changes to the one there.",
            "payday import household.json") { file };
        return Invocation.Does(command, shell, call => CommandInput.WithFile(
            shell, call.Parsed.GetRequiredValue(file), HouseholdFile.Read, household => Import(call.Folder, household, call.Tell)));
    }

    /// <summary>Stores a household.</summary>
    /// <param name="folder">Where.</param>
    /// <param name="household">The household.</param>
    /// <param name="tell">Tells what the store found; see <see cref="Invocation.Tell"/>.</param>
    public static Answer Import(StoreFolder folder, Household household, Func<BookStore, int, int>? tell = null)
    {
        using BookStore store = BookStore.Open(folder);
        Book? book = store.Load();
        tell?.Invoke(store, 0);
        if (book is null)
        {
            Book begun = Book.Begin(household);
            store.Save(new BookChange { Household = household, Movements = [.. begun.Ledger.Movements] });
            return Done($"{household.Name} is stored in {folder.Path}. Go on with payday run.");
        }

        HouseholdChange change = HouseholdChange.Of(book, household);
        if (!change.Refusals.IsEmpty)
        {
            return new Answer.Refused(change.Refusals);
        }

        store.Save(BookChange.Of(change));
        bool dropsDraft = book.Draft is not null && change.Book.Draft is null;
        return Done($"{household.Name} is changed in {folder.Path}; closed paydays stay as they are."
            + (dropsDraft ? " The payday begun is no payday any more, and was dropped." : ""));
    }

    private static Answer.Done Done(string what) => new(
        [what], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult));
}
