using System.Collections.Immutable;
using Payday.Core.Faults;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Text;

namespace Payday.Files;

/// <summary>What was read of files from a bank.</summary>
/// <param name="Files">What was read of each, by its path as it is shown.</param>
/// <param name="Refused">Files that couldn't be opened, with why.</param>
internal sealed record StatementInput(ImmutableArray<(string Path, StatementFile File)> Files, ImmutableArray<Fault> Refused)
{
    /// <summary>The most bytes that a file of a bank's may have.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    /// <summary>The statements of all files.</summary>
    public IEnumerable<Statement> Statements => Files.SelectMany(file => file.File.Statements);

    /// <summary>How CSV files were read, to be kept.</summary>
    public IEnumerable<CsvProfile> Profiles => Files.Select(file => file.File.Profile).OfType<CsvProfile>();

    /// <summary>The first question that nobody has answered yet, with its file; null for none.</summary>
    public (string Path, CsvQuestion Question)? Question => Files.Where(file => !file.File.Questions.IsEmpty).Select(file => ((string, CsvQuestion)?)(file.Path, file.File.Questions[0])).FirstOrDefault();

    /// <summary>What a file says that can't be read, each with its file.</summary>
    public IEnumerable<(string Path, StatementFault Fault)> Broken => Files.Where(file => file.File.Statements.IsEmpty && file.File.Questions.IsEmpty).SelectMany(file => file.File.Faults.Select(fault => (file.Path, fault)));

    /// <summary>What was noticed in files that were read, each with its file.</summary>
    public IEnumerable<(string Path, StatementFault Fault)> Noticed => Files.Where(file => !file.File.Statements.IsEmpty).SelectMany(file => file.File.Faults.Select(fault => (file.Path, fault)));

    /// <summary>Reads files.</summary>
    /// <param name="paths">Their paths.</param>
    /// <param name="bytes">Reads one.</param>
    /// <param name="options">What is known before.</param>
    /// <param name="answers">The numbers of the answers to what the files ask, in the order in which they ask.</param>
    public static StatementInput Read(IEnumerable<string> paths, Func<string, Result<byte[]>> bytes, ReadingOptions options, IReadOnlyList<int> answers)
    {
        (string Path, Result<byte[]> Bytes)[] all = [.. paths.Select(path => (path, bytes(path)))];
        (string Path, byte[] Bytes)[] there = [.. all.Where(one => one.Bytes.Ok).Select(one => (one.Path, one.Bytes.Value!))];

        // What is plain in one file answers for others of its header.
        ImmutableArray<StatementFile> first = StatementSet.Read([.. there.Select(one => ((ReadOnlyMemory<byte>)one.Bytes, ImmutableArray<int>.Empty))], options);
        var files = ImmutableArray.CreateBuilder<(string, StatementFile)>();
        int answered = 0;
        foreach (((string path, byte[] content), StatementFile plain) in there.Zip(first))
        {
            // Each answer leads to the next question; what was answered for one file answers for others of its header too.
            StatementFile file = plain.Questions.IsEmpty ? plain : StatementReader.Read(content, options);
            while (answered < answers.Count && file.Questions is [var question, ..] && answers[answered] <= question.Choices.Length)
            {
                CsvProfile answer = question.Choices[answers[answered] - 1].Profile;
                answered++;
                options = options with { Profiles = [answer, .. options.Profiles.Where(known => known.Header != answer.Header)] };
                file = StatementReader.Read(content, options);
            }

            files.Add((CleanText.OneLine(path), file));
        }

        return new StatementInput(files.ToImmutable(), [.. all.Where(one => !one.Bytes.Ok).Select(one => one.Bytes.Fault!)]);
    }
}
