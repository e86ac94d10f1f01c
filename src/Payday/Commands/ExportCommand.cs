using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using Payday.Core.Amounts;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Json;
using Payday.Printing;
using Payday.Reports;
using Payday.Store.Files;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday export</c>: the household file, or the book as tables.</summary>
internal static class ExportCommand
{
    public static Command Build(CommandShell shell)
    {
        var csv = new Option<string?>("--csv") { Description = "Write ledger, pots, bills, debts, lines of statements and their rules as CSV files to this folder instead.", HelpName = "DIR" };
        var replace = new Option<bool>("--replace") { Description = "Replace CSV files that are already there." };
        var command = new PaydayCommand(
            "export",
            "Print the household file, which payday import takes back exactly; or write the book as CSV.",
            "payday export > household.json") { csv, replace };
        return Invocation.Does(command, shell, call => call.OnLook(book =>
            call.Parsed.GetValue(csv) is { } folder ? Tables(call.Folder, book, call.Shell.Today(), folder, call.Parsed.GetValue(replace))
            : call.Parsed.GetValue(replace) ? new Answer.WrongUse("--replace goes with --csv.")
            : File(book.Household)));
    }

    private static Answer.Done File(Household household)
    {
        string file = HouseholdFile.Write(household);
        return new Answer.Done(file.TrimEnd('\n').Split('\n'), file.TrimEnd('\n'));
    }

    private static Answer Tables(StoreFolder own, Book book, LocalDate today, string folder, bool replace)
    {
        string? made = Missing(folder);
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Answer.Because(new WritingFault.FolderNotMade(folder, Troubles.Of(fault)));
        }

        (string Path, byte[] Content)[] files = [.. BookTables.Of(book, today).Select(table => (Path.Combine(folder, table.Name + ".csv"), table.ToUtf8()))];
        Result<ImmutableArray<string>> written = OutputFile.WriteAll(own, files, replace);
        if (!written.Ok)
        {
            TakeBack(made);
            return Answer.Because(written.Fault is FileThere there ? there.Saying("name another folder, or add --replace") : FaultTexts.Of(written.Fault));
        }

        string done = "Written: " + string.Join(", ", written.Value);
        return new Answer.Done(["Written:", .. written.Value.Select(file => "  " + file)], JsonSerializer.Serialize(new DoneResult(done), ResultJson.Readable.DoneResult))
        {
            HasChanged = true,
        };
    }

    // The highest folder that has to be made for this one; null where it is there.
    private static string? Missing(string path)
    {
        string? missing = null;
        for (string? folder = path.Length == 0 ? null : Path.GetFullPath(path); folder is not null && !Directory.Exists(folder); folder = Path.GetDirectoryName(folder))
        {
            missing = folder;
        }

        return missing;
    }

    private static void TakeBack(string? made)
    {
        try
        {
            if (made is not null)
            {
                Directory.Delete(made, recursive: true);
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // An empty folder is left; why nothing was written is what is to be said.
        }
    }
}
