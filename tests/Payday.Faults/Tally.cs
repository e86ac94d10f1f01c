namespace Payday.Faults;

/// <summary>The table of what was tried and what came out.</summary>
internal sealed class Tally
{
    private static readonly string[] Outcomes = ["same", "mended", "found", "refused", "older, said", "older, unsaid", "LOST", "WRONG", "CRASH"];
    private readonly SortedDictionary<string, SortedDictionary<string, int>> table = new(StringComparer.Ordinal);

    /// <summary>Whether nothing came out that must not.</summary>
    public bool IsSound { get; private set; } = true;

    /// <summary>Whether what must not be is only counted, where it is meant to come.</summary>
    public bool IsQuiet { get; init; }

    public void Add(string what, string outcome, string detail)
    {
        if (!table.TryGetValue(what, out SortedDictionary<string, int>? row))
        {
            table[what] = row = new(StringComparer.Ordinal);
        }

        row[outcome] = row.GetValueOrDefault(outcome) + 1;
        if (outcome is "LOST" or "WRONG" or "CRASH")
        {
            IsSound = false;
            if (!IsQuiet)
            {
                Console.WriteLine($"{outcome}: {what}: {detail}");
            }
        }
    }

    /// <summary>Prints it, as Markdown, and a last line that a build can count.</summary>
    public bool Print(string name)
    {
        Console.WriteLine($"| {name} | {string.Join(" | ", Outcomes)} |");
        Console.WriteLine("| --- |" + string.Concat(Outcomes.Select(_ => " --- |")));
        foreach ((string what, SortedDictionary<string, int> row) in table)
        {
            Console.WriteLine($"| {what} | {string.Join(" | ", Outcomes.Select(outcome => row.GetValueOrDefault(outcome)))} |");
        }

        Console.WriteLine($"{(IsSound ? "ok" : "FAILED")} {name}");
        return IsSound;
    }
}
