using System.Diagnostics;

namespace Payday.Faults.Programs;

/// <summary>Kills payday itself while commands change a store and somebody works at the full screen.</summary>
/// <remarks>
/// What was acknowledged is what a command printed or the screen showed before the program was gone. A third of the
/// kills come at any moment of a run, a third once the program has the folder, a third once the journal grows, so that
/// many fall between two writes; where each one fell is told by the files it left.
/// </remarks>
internal static class ProgramKills
{
    // What is to be met is the work, not the size of the store.
    private const int MostChanges = 60;

    // Of so many kills one is of the full screen.
    private const int ScreenEach = 2;

    // Of so many one is of the program while it mends a store or puts it back.
    private const int RecoveryEach = 8;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    public static bool Run(int count, int seed)
    {
        var random = new Random(seed);
        var tally = new Tally();
        var scratch = new Scratch(onDisk: true);
        var errands = new Errands(random, scratch);
        bool hasTerminal = Terminal.CanBeMade();
        TimeSpan whole = OneRun();
        if (!hasTerminal)
        {
            Console.WriteLine("script of util-linux is missing: the full screen was not killed.");
        }

        for (int i = 0; i < count; i++)
        {
            var before = KilledStore.Of(scratch.Folder);
            if (before.Changes > MostChanges)
            {
                scratch.Dispose();
                scratch = new Scratch(onDisk: true);
                errands = new Errands(random, scratch);
                before = KilledStore.Of(scratch.Folder);
            }

            if (before.Book is not null && i % RecoveryEach == RecoveryEach - 1)
            {
                (string row, string became, string why) = RecoveryKills.Try(random, scratch, whole);
                tally.Add(row, became, $"seed {seed}, number {i}: {why}");
                continue;
            }

            bool onScreen = hasTerminal && before.Book is not null && i % ScreenEach == ScreenEach - 1;
            (string phase, string outcome, string detail) = onScreen
                ? AtTheScreen(random, scratch, before, whole, i)
                : OfACommand(random, scratch, before, whole, errands.Next(before.Book));
            tally.Add($"{(onScreen ? "full screen" : "command")} killed {phase}", outcome, $"seed {seed}, number {i}: {detail}");
        }

        scratch.Dispose();
        return tally.Print("program");
    }

    // How long a command takes that is left alone; the first run of a program takes longer than any other.
    private static TimeSpan OneRun()
    {
        using var scratch = new Scratch(onDisk: true);
        long start = 0;
        foreach (string[] command in (string[][])[["import", Life.Demo()], ["spend", "buffer", "1"]])
        {
            start = Stopwatch.GetTimestamp();
            (int exit, _, string complained) = ProgramUnderTest.Run([.. command, "--data", scratch.Folder.Path]);
            if (exit != 0)
            {
                throw new InvalidOperationException(complained);
            }
        }

        return Stopwatch.GetElapsedTime(start);
    }

    private static (string Phase, string Outcome, string Detail) OfACommand(Random random, Scratch scratch, KilledStore before, TimeSpan whole, Errand errand)
    {
        using Process process = ProgramUnderTest.Start([.. errand.Arguments, "--data", scratch.Folder.Path]);
        Task<string> complained = process.StandardError.ReadToEndAsync();
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        var moment = new Moment(scratch.Folder, whole, () => process.HasExited);
        moment.Wait(random);
        process.Kill();
        process.WaitForExit();

        // Killed is 128 + 9; a command that came to its end before must have been taken.
        string doing = string.Join(' ', errand.Arguments);
        if (process.ExitCode is not (0 or 137) || complained.Result.Length > 0)
        {
            return ("", "WRONG", $"{doing}: exit {process.ExitCode}, {complained.Result}");
        }

        bool isTold = said.Result.Contains(errand.Told, StringComparison.Ordinal);
        if (process.ExitCode == 0 && !isTold)
        {
            return ("", "WRONG", $"{doing}: it said {said.Result}");
        }

        string phase = before.PhaseOf(scratch.Folder, isTold ? errand.Changes : 0);
        (string outcome, string detail) = before.Look(scratch, isTold ? errand.Changes : 0, isTold ? errand.Changes : 1, book => isTold && !errand.IsThere(book!) ? doing : null);
        return (phase, outcome, $"{doing}: {detail}");
    }

    private static (string Phase, string Outcome, string Detail) AtTheScreen(Random random, Scratch scratch, KilledStore before, TimeSpan whole, int number)
    {
        using var terminal = new Terminal(scratch);
        int last = random.Next(3) == 0 ? int.MaxValue : random.Next(1, 10);
        TimeSpan after = last == int.MaxValue ? whole * (random.NextDouble() * 8) : TimeSpan.FromMilliseconds(random.NextDouble() * 12);
        using var timer = new Timer(_ => terminal.Kill(), null, last == int.MaxValue ? after : Patience * 3, Timeout.InfiniteTimeSpan);
        var person = new Person(terminal, number * 100)
        {
            Pressed = count =>
            {
                if (count == last)
                {
                    Moment.Spin(after, () => false);
                    terminal.Kill();
                }
            },
        };
        person.Work(random.Next(6));
        terminal.End();
        string shown = terminal.Shown;
        if (person.Stuck is { } stuck)
        {
            return ("", "WRONG", stuck);
        }

        string phase = before.PhaseOf(scratch.Folder, person.Acknowledged);
        (string outcome, string detail) = before.Look(
            scratch,
            person.Acknowledged,
            person.Acknowledged + 1,
            book => person.Bought.FirstOrDefault(what => !book!.Weeks.Purchases.Any(purchase => purchase.What == what)));
        return (phase, outcome, $"{detail}, the screen was\n{shown}");
    }
}
