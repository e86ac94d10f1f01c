namespace Payday.Commands;

/// <summary>A fault of the program itself, for the person: no stack trace, and nothing of the household in it.</summary>
internal static class OwnFault
{
    /// <summary>What happened, what is safe and what to do.</summary>
    /// <remarks>The fault's own message is left out: it may name amounts and people, and this line is to be passed on.</remarks>
    public static string Sentence(Exception fault) =>
        $"Payday met a fault of its own ({fault.GetType().Name}{Place(fault)}). What was confirmed before is stored. Run payday check, then try again; if it comes back, pass this line on: nothing of your household is in it.";

    private static string Place(Exception fault)
    {
        string first = fault.StackTrace?.Split('\n')[0].Trim() ?? "";
        int end = first.IndexOfAny(['(', ' '], Math.Min(first.Length, 3));
        return end < 0 ? "" : $" {first[..end]}";
    }
}
