using System.CommandLine;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.ClosedPaydays;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Screens.Leading;
using Payday.Screens.Shell;
using Payday.Slips;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Store.HouseholdFiles;
using Payday.Store.Json;
using Payday.Texts;

namespace Payday.Commands;

/// <summary><c>payday demo</c>: a whole payday on the demo household, in a folder that is thrown away.</summary>
internal static class DemoCommand
{
    private const string Resource = "demo-household.json";

    public static Command Build(CommandShell shell)
    {
        var command = new PaydayCommand(
            "demo",
            "Run one payday of the demo household, from income to slip, in a throw-away folder.",
            "payday demo");
        return Invocation.Does(command, shell, Run);
    }

    /// <summary>The demo household.</summary>
    public static Household Household()
    {
        using Stream stream = typeof(DemoCommand).Assembly.GetManifestResourceStream(Resource)!;
        using var reader = new StreamReader(stream);
        JsonReading<Household> reading = HouseholdFile.Read(reader.ReadToEnd());
        return reading.Value ?? throw new InvalidOperationException(reading.Faults[0].ToString());
    }

    private static Answer Run(Invocation call) => call.OpensScreens ? Screens() : call.AsksByLine ? Questions(call) : OnePayday();

    private static Answer Screens()
    {
        using var demo = new DemoFolder();
        FullScreen.Run(demo.Open(), new ScreenMap().Lead);
        return new Answer.Done([], "{}");
    }

    private static Answer Questions(Invocation call)
    {
        using var demo = new DemoFolder();
        return AskCommand.Ask(call, demo.Begin(), null);
    }

    private static Answer OnePayday()
    {
        using var folder = new ThrowAwayFolder(DemoFolder.Prefix);
        return OnePayday(new StoreFolder(folder.Path));
    }

    // The same way as a person's own household: stored, loaded, planned, closed, and the papers made from what is stored.
    private static Answer OnePayday(StoreFolder folder)
    {
        Household household = Household();
        ImportCommand.Import(folder, household);
        using BookStore store = BookStore.Open(folder);
        Book book = store.Load()!;
        Result<RoutinePlan> plan = Routine.Plan(book, new RoutineDraft(Routine.Next(book).Value));
        Result<Book> after = plan.Then(Closing.Of);
        if (!after.Ok)
        {
            return Answer.Because(after.Fault, household.Settings.Numbers);
        }

        store.Save(book, after.Value);
        ClosedPayday closed = store.Load()!.LastClosed!;
        return new Answer.Done(
            [
                .. RoutineReport.Lines(plan.Value!),
                "",
                .. Report.Heading("7 Slip"),
                .. SlipLayout.Lay(BankPapers.Slip(household, closed), SlipLayout.UsualWidth).Lines,
                "",
                .. FillingSheetLayout.Lay(BankPapers.Filling(household, closed), Report.Width).Lines,
                "",
                .. Cautions.Routine,
            ],
            RoutineJson.Of(plan.Value!, closed: true));
    }
}
