namespace Payday.Journeys;

/// <summary>The seven steps as the routine's second line marks the one worked on.</summary>
internal static class Steps
{
    private static readonly string[] Names = ["Income", "Bills", "Debt minimums", "Pots", "Surplus", "Withdrawal", "Slip"];

    public static string Mark(int step) => "> " + Names[step - 1];

    /// <summary>From home to a step of the routine.</summary>
    public static TerminalSession To(this TerminalSession terminal, int step) => terminal.Press("Enter", Mark(1)).On(1, step);

    /// <summary>From a step of the routine on to another.</summary>
    public static TerminalSession On(this TerminalSession terminal, int from, int to)
    {
        for (int next = from + 1; next <= to; next++)
        {
            terminal.Press("Right", Mark(next));
        }

        return terminal;
    }

    /// <summary>Enters a card purchase from the first pot.</summary>
    public static TerminalSession Buy(this TerminalSession terminal, string what, string amount, string owed) => terminal
        .Press("a", "Bought by card")
        .Fill("What was it", what, ">Amount")
        .Fill("What the card paid", amount, ">Pot")
        .Press("Right", "Card purchases")
        .WaitFor(owed);

    /// <summary>Fills in the field under the cursor.</summary>
    public static TerminalSession Fill(this TerminalSession terminal, string label, string text, string then) =>
        terminal.Type(text, $"{label}: {text}").Press("Enter", then);

    /// <summary>Changes the figure under the cursor.</summary>
    public static TerminalSession Change(this TerminalSession terminal, string to, string then) =>
        terminal.Press("Enter", ": ").Type(to, ": " + to).Press("Enter", then);
}
