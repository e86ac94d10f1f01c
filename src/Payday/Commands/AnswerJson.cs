using System.Text.Json;
using Payday.Json;

namespace Payday.Commands;

/// <summary>What all answers in JSON have in common: one object with its version.</summary>
internal static class AnswerJson
{
    /// <summary>
    /// The version of the answers. It rises where a field goes, or means something else; a field that is new changes nothing for
    /// who doesn't know it.
    /// </summary>
    public const int Version = 1;

    private const string Field = "\"version\"";

    /// <summary>An answer with the version in front; one that has its own, as a household file, is left as it is.</summary>
    public static string Of(string document)
    {
        string rest = document.TrimStart()[1..].TrimStart();
        return rest.StartsWith(Field, StringComparison.Ordinal) ? document
            : $"{{{Field}:{Version}{(rest is ['}', ..] ? "" : ",")}{rest}";
    }

    /// <summary>The answer of a command that was refused or not called right.</summary>
    public static string Refusal(int exit, string kind, IReadOnlyList<string> reasons) =>
        Of(JsonSerializer.Serialize(new RefusalResult(new ErrorResult(kind, exit, [.. reasons.Select(Text.CleanText.OneLine)])), ResultJson.Readable.RefusalResult));
}
