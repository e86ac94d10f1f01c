namespace Payday.Store.Texts;

/// <summary>What was typed, as a refusal repeats it: only so much as leaves the sentence readable.</summary>
public static class Echo
{
    private const int Longest = 24;

    /// <summary>The beginning of a text that was typed.</summary>
    public static string Of(string text) => text.Length <= Longest ? text : text[..Longest] + "...";
}
