namespace Payday.Questions;

/// <summary>Reads yes and no.</summary>
internal static class YesOrNo
{
    /// <summary>What an answer says; null where it is neither.</summary>
    /// <param name="text">The answer; empty takes the proposal.</param>
    /// <param name="proposed">The proposal.</param>
    public static bool? Read(string text, bool proposed) => text.ToUpperInvariant() switch
    {
        "" => proposed,
        "Y" or "YES" => true,
        "N" or "NO" => false,
        _ => null,
    };

    /// <summary>What is said where an answer is neither.</summary>
    public const string Neither = "Type yes or no.";

    /// <summary>The proposal, in words.</summary>
    public static string Proposed(bool yes) => yes ? "yes proposed" : "no proposed";
}
