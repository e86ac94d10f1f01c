using System.Collections.Immutable;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Files;

/// <summary>The bank's files that a person names by typing: one by its path or its beginning, or all of a folder.</summary>
internal static class BankPaths
{
    /// <summary>The files that are meant, by their names; or why none is.</summary>
    public static Result<ImmutableArray<string>> Of(string typed)
    {
        string text = typed.Trim();
        if (text.Length > 0 && PersonPath.Full(text) is var folder && Directory.Exists(folder))
        {
            ImmutableArray<string> files = [.. PersonPath.Files(folder)];
            return files.IsEmpty ? Result.Refused<ImmutableArray<string>>(new ReadingFault.NotThere(Text.CleanText.OneLine(text))) : Result.Of(files);
        }

        return TypedPath.Of(text).Map(ImmutableArray.Create);
    }
}
