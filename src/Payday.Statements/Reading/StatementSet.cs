using System.Collections.Immutable;
using Payday.Statements.Files;

namespace Payday.Statements.Reading;

/// <summary>Reads several files of which each may say how another is to be read.</summary>
public static class StatementSet
{
    /// <summary>Reads files, in their order.</summary>
    /// <param name="files">The bytes of each, with the answers given so far: the place of the reading chosen, from 0, question by question.</param>
    /// <param name="options">What is known before.</param>
    /// <returns>
    /// What was found in each. An export of the first twelve days of a month doesn't say which figure is the day; where another
    /// of the same header does, both are read like that and nothing is asked.
    /// </returns>
    public static ImmutableArray<StatementFile> Read(IReadOnlyList<(ReadOnlyMemory<byte> Bytes, ImmutableArray<int> Answers)> files, ReadingOptions options)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(options);
        StatementFile[] read = [.. files.Select(file => Answered(file.Bytes, file.Answers, options))];
        ImmutableArray<CsvProfile> known = [.. read.Select(file => file.Profile).OfType<CsvProfile>()];
        if (known.IsEmpty)
        {
            return [.. read];
        }

        ReadingOptions informed = options with { Profiles = [.. options.Profiles, .. known] };
        return [.. read.Select((file, i) => file.Questions.IsEmpty ? file : Answered(files[i].Bytes, files[i].Answers, informed))];
    }

    private static StatementFile Answered(ReadOnlyMemory<byte> bytes, ImmutableArray<int> answers, ReadingOptions options)
    {
        StatementFile file = StatementReader.Read(bytes, options);
        foreach (int answer in answers)
        {
            if (file.Questions is not [var first, ..] || answer < 0 || answer >= first.Choices.Length)
            {
                break;
            }

            file = StatementReader.Read(bytes, options with { Profiles = [first.Choices[answer].Profile, .. options.Profiles] });
        }

        return file;
    }
}
