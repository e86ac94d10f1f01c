namespace Payday.Journeys;

/// <summary>The seven steps as the routine's second line marks the one worked on.</summary>
internal static class Steps
{
    private static readonly string[] Names = ["Income", "Bills", "Debt minimums", "Pots", "Surplus", "Withdrawal", "Slip"];

    public static string Mark(int step) => "> " + Names[step - 1];

    /// <summary>From home to a step of the routine.</summary>
    public static TerminalSession To(this TerminalSession terminal, int step)
    {
        terminal.Press("Enter", Mark(1));
        for (int next = 2; next <= step; next++)
        {
            terminal.Press("Right", Mark(next));
        }

        return terminal;
    }
}
