using System.CommandLine;
using System.Text.Json;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Json;
using Payday.Printing;
using Payday.Reports;
using Payday.Store.HouseholdFiles;

namespace Payday.Commands;

/// <summary><c>payday export</c>: the household file, or the book as tables.</summary>
internal static class ExportCommand
{
    public static Command Build(CommandShell shell)
    {
        var csv = new Option<string?>("--csv") { Description = "Write ledger, pots, bills and debts as CSV files to this folder instead.", HelpName = "DIR" };
        var replace = new Option<bool>("--replace") { Description = "Replace CSV files that are already there." };
        var command = new PaydayCommand(
            "export",
            "Print the household file, which payday import takes back exactly; or write the book as CSV.",
            "payday export > household.json") { csv, replace };
        return Invocation.Does(command, shell, call => call.OnLook(book =>
            call.Parsed.GetValue(csv) is { } folder ? Tables(book, folder, call.Parsed.GetValue(replace))
            : call.Parsed.GetValue(replace) ? new Answer.WrongUse("--replace goes with --csv.")
            : File(book.Household)));
    }

    private static Answer.Done File(Household household)
    {
        string file = HouseholdFile.Write(household);
        return new Answer.Done(file.TrimEnd('\n').Split('\n'), file.TrimEnd('\n'));
    }

    private static Answer Tables(Book book, string folder, bool replace)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Answer.Because($"The folder {folder} can't be made: {fault.Message.Split('\n')[0]}");
        }

        (string Path, CsvTable Table)[] files = [.. BookTables.Of(book).Select(table => (Path.Combine(folder, table.Name + ".csv"), table))];
        if (!replace && files.FirstOrDefault(file => System.IO.File.Exists(file.Path)).Path is { } there)
        {
            return Answer.Because($"{there} is already there; name another folder, or add --replace.");
        }

        var written = new List<string>();
        foreach ((string path, CsvTable table) in files)
        {
            Read<string> file = OutputFile.Write(path, table.ToUtf8(), replace);
            if (!file.Ok)
            {
                return Answer.Because(file.Fault);
            }

            written.Add(file.Value);
        }

        string done = "Written: " + string.Join(", ", written);
        return new Answer.Done(["Written:", .. written.Select(file => "  " + file)], JsonSerializer.Serialize(new DoneResult(done), ResultJson.Readable.DoneResult));
    }
}
