using System.Globalization;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Faults.Programs;
using Payday.Store;
using Payday.Store.Checks;

namespace Payday.Faults.Monkeys;

/// <summary>Lets somebody who knows nothing at the full screen, life after life, and looks at what is left each time.</summary>
/// <remarks>
/// Each life has a seed of its own, made of the run's seed and its number: the same keys again, though not at the same
/// moments. A life begins in an empty folder, with the demo household, or some paydays on, and folders go on for some lives.
/// </remarks>
internal static class MonkeyRun
{
    private const int LivesOfAFolder = 8;
    private const int MostKeysOfALife = 500;
    private const int DeedsTold = 40;
    private const int HangUp = 1;
    private const int Interrupt = 2;
    private const int Quit = 3;
    private const int Kill = 9;
    private const int Terminate = 15;
    private const int GoOn = 18;
    private const int BySignal = 128;
    private const byte ToBackground = 0x1a;

    private static readonly string[] Starts = ["an empty folder", "the demo household", "some paydays on"];

    public static bool Run(int seed, int keys)
    {
        var tally = new Tally();
        if (!Pty.CanBeMade)
        {
            Console.WriteLine("setsid of util-linux is missing: no monkey was let in.");
            return tally.Print("monkey");
        }

        int pressed = 0;
        (int Movements, int Paydays, int Purchases, int Counts) came = default;
        for (int folder = 0; pressed < keys && tally.IsSound; folder++)
        {
            using var scratch = new Scratch();
            string start = Starts[folder % Starts.Length];
            Begin(scratch, folder % Starts.Length);
            for (int life = 0; life < LivesOfAFolder && pressed < keys && tally.IsSound; life++)
            {
                int number = (folder * LivesOfAFolder) + life;
                var random = new Random(unchecked((seed * 1_000_003) + number));
                var lived = new MonkeyLife(random, scratch, Math.Min(keys - pressed, random.Next(10, MostKeysOfALife)));
                (string ending, string outcome, string detail) = lived.Live();
                pressed += lived.Keys;
                tally.Add($"{start}, {ending}", outcome, string.Create(CultureInfo.InvariantCulture, $"seed {seed}, life {number}: {detail}"));
            }

            if (scratch.Folder.HasBook && BookOf(scratch) is { } book)
            {
                came = (came.Movements + book.Ledger.Movements.Count, came.Paydays + book.Closed.Length, came.Purchases + book.Weeks.Purchases.Count, came.Counts + book.Weeks.Counts.Count);
            }
        }

        // How far it came: a monkey that gets nowhere finds nothing.
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"seed {seed}: {pressed} keys; the books have {came.Movements} movements, {came.Paydays} closed paydays, {came.Purchases} card purchases, {came.Counts} counts"));
        return tally.Print("monkey");
    }

    private static Book? BookOf(Scratch scratch)
    {
        using BookStore store = BookStore.Open(scratch.Folder);
        return store.Load();
    }

    private static void Begin(Scratch scratch, int start)
    {
        if (start == 0)
        {
            return;
        }

        Command(scratch, "import", Life.Demo());
        for (int i = 0; start == 2 && i < 3; i++)
        {
            Command(scratch, "run", "--accept");
        }
    }

    private static void Command(Scratch scratch, params string[] arguments)
    {
        (int exit, string said, string complained) = ProgramUnderTest.Run([.. arguments, "--data", scratch.Folder.Path]);
        if (exit != 0)
        {
            throw new InvalidOperationException(said + complained);
        }
    }

    /// <summary>One life of the program.</summary>
    private sealed class MonkeyLife(Random random, Scratch scratch, int most)
    {
        private readonly Queue<string> last = new();

        /// <summary>How many keys were pressed.</summary>
        public int Keys { get; private set; }

        public (string Ending, string Outcome, string Detail) Live()
        {
            string ending = random.Next(10) switch { 0 or 1 => "killed", 2 => "hung up", 3 => "terminated", _ => "left" };
            using var program = new PtyProgram(scratch);

            // Some begin at once, as a person types ahead.
            if (random.Next(5) > 0 && !program.WaitUntil(() => program.Written > 500, PtyProgram.Patience) && !program.HasEnded)
            {
                return (ending, "WRONG", Told(program, "it shows nothing"));
            }

            var monkey = new Monkey(random);
            while (Keys < most && !program.HasEnded)
            {
                if (!Do(program, monkey.Next()))
                {
                    return (ending, "WRONG", Told(program, "it takes no more keys"));
                }
            }

            program.IsAway = false;
            if (!program.HasEnded && !End(program, ending))
            {
                return (ending, "WRONG", Told(program, "it does not end"));
            }

            (int exit, string complained, string left, string? trace) = program.End();
            // Ctrl+C and Ctrl+\ that are typed before the program has the terminal are signals.
            int[] codes = [0, BySignal + Interrupt, BySignal + Quit, .. ending switch { "killed" => [BySignal + Kill], "hung up" => [BySignal + HangUp], "terminated" => new[] { BySignal + Terminate }, _ => [] }];
            return (ending, true) switch
            {
                _ when trace is not null => (ending, "CRASH", Told(program, $"it showed '{trace}', {complained}")),
                _ when !ProgramUnderTest.HasItsOwnWords("", complained) => (ending, "CRASH", Told(program, complained)),
                _ when !codes.Contains(exit) => (ending, "WRONG", Told(program, $"exit {exit}, {complained}")),
                _ when exit != BySignal + Kill && left.Length > 0 => (ending, "WRONG", Told(program, $"exit {exit}, the terminal has {left}")),
                _ => Looked(program, ending),
            };
        }

        private bool Do(PtyProgram program, Deed deed)
        {
            last.Enqueue(Monkey.Told(deed));
            if (last.Count > DeedsTold)
            {
                last.Dequeue();
            }

            switch (deed)
            {
                case Deed.Send send:
                    Keys += send.Count;
                    bool isTaken = program.Send(send.Bytes);
                    if (send.Bytes.Contains(ToBackground))
                    {
                        // No shell is there to bring it back.
                        Thread.Sleep(20);
                        program.Signal(GoOn);
                    }

                    return isTaken;
                case Deed.Resize size:
                    program.Resize(size.Width, size.Height);
                    return true;
                case Deed.Pause pause:
                    program.IsAway = !pause.Reads;
                    Thread.Sleep(pause.Milliseconds);
                    program.IsAway = false;
                    return true;
                default:
                    return false;
            }
        }

        // Leaving is a key and an answer; whatever stands there before, it is not far.
        private static bool End(PtyProgram program, string ending)
        {
            switch (ending)
            {
                case "killed":
                    program.Signal(Kill);
                    break;
                case "hung up":
                    program.Signal(HangUp);
                    break;
                case "terminated":
                    program.Signal(Terminate);
                    break;
                default:
                    program.Resize(80, 24);
                    program.Signal(GoOn);

                    // As it comes back the runtime sets the terminal anew; who leaves in that very moment meets it half done.
                    Thread.Sleep(100);
                    program.Send("\e[201~"u8.ToArray());
                    for (int i = 0; i < 120 && !program.HasEnded; i++)
                    {
                        // On a busy machine it may stop itself only now, for a key of long ago.
                        if (program.IsStopped)
                        {
                            program.Signal(GoOn);
                            Thread.Sleep(100);
                        }

                        program.Send("\x03"u8.ToArray());
                        program.WaitForEnd(TimeSpan.FromMilliseconds(200));
                        program.Send("\r"u8.ToArray());
                        program.WaitForEnd(TimeSpan.FromMilliseconds(300));
                    }

                    break;
            }

            return program.WaitForEnd(PtyProgram.Patience);
        }

        // What is stored checks, adds up, and nobody has it open any more.
        private (string Ending, string Outcome, string Detail) Looked(PtyProgram program, string ending)
        {
            if (!scratch.Folder.HasBook)
            {
                return (ending, "same", "");
            }

            try
            {
                bool isMended;
                using (BookStore store = BookStore.Open(scratch.Folder))
                {
                    isMended = store.Told().Length > 0;
                    if (store.Load() is { } book && WhatIsWrong(book) is { } wrong)
                    {
                        return (ending, "WRONG", Told(program, wrong));
                    }
                }

                Finding[] found = [.. StoreCheck.Run(scratch.Folder).Findings.Where(finding => finding.Part != CheckPart.Files)];
                return found.Length == 0 ? (ending, isMended ? "mended" : "same", "") : (ending, "WRONG", Told(program, found[0].ToString()));
            }
            catch (Exception fault)
            {
                return (ending, "CRASH", Told(program, fault.ToString()));
            }
        }

        private static string? WhatIsWrong(Book book)
        {
            Balances balances = book.Ledger.Balances;
            foreach (Place place in Enum.GetValues<Place>())
            {
                var sum = Core.Amounts.Money.Sum(balances.PurposesIn(place).Select(purpose => purpose.Amount), balances.Currency);
                if (sum != balances.In(place))
                {
                    return $"the purposes in {place} come to {sum}, and it has {balances.In(place)}";
                }

                if (balances.PurposesIn(place).FirstOrDefault(purpose => purpose.Amount.IsNegative && purpose.Purpose.Kind != PurposeKind.OwedBack) is { Amount.IsNegative: true } below)
                {
                    return $"{below.Purpose} has {below.Amount} in {place}";
                }
            }

            return null;
        }

        private string Told(PtyProgram program, string what) =>
            $"{what}\nthe last keys: {string.Join(' ', last)}\nthe last of what it showed: {string.Concat(program.Text.TakeLast(1500))}";
    }
}
