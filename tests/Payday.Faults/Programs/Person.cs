using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Payday.Faults.Programs;

/// <summary>Somebody at the full screen: buys, closes paydays, reopens them and fills the wallet, until the program is gone.</summary>
/// <param name="terminal">The terminal.</param>
/// <param name="number">What to number purchases from.</param>
internal sealed partial class Person(Terminal terminal, int number)
{
    private const string Enter = "\r";
    private const string Right = "\e[C";
    private const string Back = "\e";

    // The bottom line of a screen that has no keys of its own. It is painted last, so nothing of the screen before is left.
    private const string NoKeys = "\n ? help  Esc back";
    private const string Refused = "enter it on another pot";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private int number = number;

    /// <summary>How many changes the screen has shown to be stored.</summary>
    public int Acknowledged { get; private set; }

    /// <summary>What was bought and shown as stored.</summary>
    public List<string> Bought { get; } = [];

    /// <summary>Called after a key was pressed that changes something, with the number of such keys.</summary>
    public Action<int>? Pressed { get; init; }

    /// <summary>Why it came to an end before the program was killed; null where it didn't.</summary>
    public string? Stuck { get; private set; }

    private int Changing { get; set; }

    /// <summary>Works until the program is gone.</summary>
    /// <param name="from">Which work comes first.</param>
    public void Work(int from)
    {
        Action[] works = [Buy, Close, Reopen, Close, Buy, Fill];
        try
        {
            WaitFor("Esc leave");
            for (int i = from; ; i++)
            {
                works[i % works.Length]();
            }
        }
        catch (EndOfStreamException)
        {
            // It was killed, which is what all this is for.
        }
        catch (TimeoutException fault)
        {
            Stuck = fault.Message;
        }
    }

    private void Buy()
    {
        string what = string.Create(CultureInfo.InvariantCulture, $"errand {++number}");
        Press("b", "Card purchases");
        Press("a", "Bought by card");

        // Each field is stored as it is left; another amount each time, as one that stands there already is none.
        string amount = string.Create(CultureInfo.InvariantCulture, $"1.{10 + (number % 90)}");
        Press(what, ": " + what);
        Change(Enter, ">Amount");
        Press(amount, ": " + amount);
        Change(Enter, ">Pot");
        while (!Change(Right, "Card purchases", Refused))
        {
            // A letter goes to the next pot that begins with it, and is stored; one of them is the buffer, which is never refused.
            terminal.Send("b");
            Pressed?.Invoke(++Changing);
            WaitUntil(shown => !shown.Contains(Refused, StringComparison.Ordinal), "the refusal stayed");
            Acknowledged++;
        }

        Bought.Add(what);
        Press(Back, "Esc leave");
    }

    private void Close()
    {
        Press(Enter, "> Income", "> Bills", "> Debt minimums", "> Pots", "> Surplus", "> Withdrawal", "> Slip");
        for (string step = Step(); step != "Slip"; step = Step())
        {
            string[] after = ["Income", "Bills", "Debt minimums", "Pots", "Surplus", "Withdrawal", "Slip"];
            Change(Right, "> " + after[Array.IndexOf(after, step) + 1]);
        }

        Press("c", "Enter close it");
        Change(Enter, "The payday is closed.");
    }

    private void Reopen()
    {
        Press("l", "z reopen");
        if (Press("z", "Enter reopen it", NoKeys) == "Enter reopen it")
        {
            Change(Enter, "The payday is open again");
            return;
        }

        Press(Back, "z reopen");
        Press(Back, "Esc leave");
    }

    private void Fill()
    {
        if (Press("f", "Ctrl+A all done", NoKeys) == "Ctrl+A all done" && terminal.Shown.Contains("to fill by today", StringComparison.Ordinal))
        {
            Change("\x01", " filled.");
        }

        Press(Back, "Esc leave");
    }

    private string Step() => OfStep().Match(terminal.Shown).Groups[1].Value;

    // Whether it was shown as stored; else it was refused.
    private bool Change(string key, string then, params string[] refused)
    {
        terminal.Send(key);
        Pressed?.Invoke(++Changing);
        bool isStored = WaitFor([then, .. refused]) == then;
        Acknowledged += isStored ? 1 : 0;
        return isStored;
    }

    private string Press(string keys, params string[] then)
    {
        terminal.Send(keys);
        return WaitFor(then);
    }

    private string WaitFor(params string[] texts)
    {
        string? seen = null;
        WaitUntil(shown => (seen = texts.FirstOrDefault(text => shown.Contains(text, StringComparison.Ordinal))) is not null, $"'{string.Join("' or '", texts)}' never showed");
        return seen!;
    }

    // Whatever was shown before the program was gone counts as shown.
    private void WaitUntil(Func<string, bool> happened, string otherwise)
    {
        for (var watch = Stopwatch.StartNew(); ; Thread.Sleep(1))
        {
            bool isOver = terminal.IsOver;
            string shown = terminal.Shown;
            if (happened(shown))
            {
                return;
            }

            if (isOver)
            {
                throw new EndOfStreamException();
            }

            if (watch.Elapsed > Patience)
            {
                throw new TimeoutException($"{otherwise}; the screen is:\n{shown}");
            }
        }
    }

    [GeneratedRegex("> (Income|Bills|Debt minimums|Pots|Surplus|Withdrawal|Slip)")]
    private static partial Regex OfStep();
}
