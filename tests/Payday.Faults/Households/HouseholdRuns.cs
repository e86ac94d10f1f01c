namespace Payday.Faults.Households;

/// <summary>Random households, a year each.</summary>
internal static class HouseholdRuns
{
    /// <param name="seed">The first household's; the next ones follow on.</param>
    /// <param name="count">How many.</param>
    public static bool Run(int seed, int count)
    {
        var tally = new Tally();
        int closed = 0;
        for (int i = seed; i < seed + count; i++)
        {
            using var scratch = new Scratch();
            using var other = new Scratch();
            var player = new CommandPlayer(scratch.Folder);
            var year = new HouseholdYear(i, player);
            try
            {
                (bool taken, int paydays) = year.Play(new CommandPlayer(other.Folder));
                closed += paydays;
                tally.Add("households", taken ? "same" : "refused", "");
            }
            catch (CommandFailure failure)
            {
                tally.Add($"households: {failure.Kind}", failure.Kind is "CRASH" or "HANG" ? "CRASH" : "WRONG", $"household {i}: {failure.Message}");
            }
        }

        Console.WriteLine($"{closed} paydays closed");
        return tally.Print("households");
    }
}
