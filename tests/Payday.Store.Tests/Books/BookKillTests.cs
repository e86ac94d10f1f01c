using System.Diagnostics;
using System.Globalization;
using Payday.Core.Books;
using Payday.Store.Changes;
using Payday.Store.Folders;

namespace Payday.Store.Tests.Books;

public sealed class BookKillTests
{
    private const int Kills = 50;

    [Fact]
    public void Save_ProcessKilledAtAnyMoment_LosesNothingAcknowledgedAndKeepsNothingHalf()
    {
        using var scratch = new ScratchFolder();
        using (BookStore store = Samples.Begun(scratch.Data))
        {
            // Enough to start from that each change touches more than a page.
            store.Save(new BookChange { Movements = Samples.Incomes(50) });
        }

        int start = Movements(scratch.Data, out long saved);
        for (int kill = 0; kill < Kills; kill++)
        {
            // Evenly over what a few changes take, so that the moments differ from run to run only as the machine does.
            long acknowledged = SaveUntilKilled(scratch.Data, saved, TimeSpan.FromMilliseconds(kill * 0.7));
            int movements = Movements(scratch.Data, out saved);

            Assert.InRange(saved, acknowledged, acknowledged + 1);
            Assert.Equal(start + (saved * ChildProcess.MovementsEach), movements);
        }

        Assert.True(saved >= Kills);
    }

    private static int Movements(StoreFolder folder, out long saved)
    {
        using BookStore store = BookStore.Open(folder);
        Book book = store.Load()!;
        saved = ChildProcess.LastSaved(book);
        return book.Ledger.Movements.Count;
    }

    private static long SaveUntilKilled(StoreFolder folder, long saved, TimeSpan afterTheFirst)
    {
        using Process child = ChildProcess.StartSaving(folder, saved);
        string first = child.StandardOutput.ReadLine()!;
        Thread.Sleep(afterTheFirst);
        child.Kill();
        string rest = child.StandardOutput.ReadToEnd();
        child.WaitForExit();

        // A line without its end was cut by the kill.
        string[] lines = (first + "\n" + rest).Split('\n');
        return long.Parse(lines[^2], CultureInfo.InvariantCulture);
    }
}
