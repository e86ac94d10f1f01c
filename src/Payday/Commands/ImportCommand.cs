using System.CommandLine;
using System.Text.Json;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.HouseholdChanges;
using Payday.Core.Households;
using Payday.Json;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Texts;

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
            shell,
            call.Parsed.GetRequiredValue(file),
            HouseholdFile.Read,
            household => call.OnStore((store, book) => Import(store, book, household))));
    }

    /// <summary>Stores a household in a folder.</summary>
    public static Answer Import(StoreFolder folder, Household household)
    {
        using BookStore store = BookStore.Open(folder);
        return Import(store, store.Load(), household);
    }

    private static Answer Import(BookStore store, Book? book, Household household)
    {
        if (book is null)
        {
            store.Save(null, Book.Begin(household));
            return Done($"{household.Name} is stored in {store.Folder.Path}. Go on with payday run.");
        }

        Result<Book> changed = HouseholdChange.Of(book, household);
        if (!changed.Ok)
        {
            return new Answer.Refused([.. changed.Faults.Select(fault => ChangeTexts.InAFile(fault, book.Household.Settings.Numbers))]);
        }

        store.Save(book, changed.Value);
        bool dropsDraft = book.Draft is not null && changed.Value.Draft is null;
        return Done($"{household.Name} is changed in {store.Folder.Path}; closed paydays stay as they are."
            + (dropsDraft ? " The payday begun is no payday any more, and was dropped." : ""));
    }

    private static Answer.Done Done(string what) => new(
        [what], JsonSerializer.Serialize(new DoneResult(what), ResultJson.Readable.DoneResult));
}
