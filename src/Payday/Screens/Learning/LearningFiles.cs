using System.Collections.Immutable;
using Payday.Core.Faults;
using Payday.Files;
using Payday.Screens.Setup.Forms;
using Payday.Statements.Files;
using Payday.Statements.Learning;
using Payday.Statements.Lines;
using Payday.Statements.Reading;
using Payday.Store.Starts;
using Payday.Texts;

namespace Payday.Screens.Learning;

/// <summary>The bank's files that a household is set up from, each read once, with the answers to what they ask.</summary>
internal sealed class LearningFiles
{
    private const int MostFiles = 200;

    private readonly SetupWork household;
    private readonly Dictionary<string, Result<byte[]>> bytes = new(StringComparer.Ordinal);

    /// <summary>Goes on with the files that were named before.</summary>
    public LearningFiles(SetupWork household)
    {
        this.household = household;
        Read();
    }

    /// <summary>The files, in the order in which they were named.</summary>
    public ImmutableArray<LearningFile> All { get; private set; } = [];

    /// <summary>What they teach; null where there is no line yet.</summary>
    public Lessons? Lessons { get; private set; }

    /// <summary>The statements that were read.</summary>
    public IEnumerable<Statement> Statements => All.SelectMany(file => file.Found.Statements);

    /// <summary>Names a file, or all files of a folder.</summary>
    /// <returns>Why not, a sentence; null where all of it is among the files.</returns>
    public string? Add(string text)
    {
        Result<ImmutableArray<string>> named = BankPaths.Of(text);
        if (!named.Ok)
        {
            return FaultTexts.Of(named.Fault);
        }

        ImmutableArray<string> paths = named.Value;
        StartStatements kept = household.Statements;
        string[] added = [.. paths.Where(path => kept.Files.All(file => file.Path != path))];
        if (added.Length == 0)
        {
            return "That is among the files already.";
        }

        if (kept.Files.Length + added.Length > MostFiles)
        {
            return $"That would be more than {MostFiles} files.";
        }

        // One file that isn't there is a slip of the fingers; of a folder each says for itself what is wrong.
        if (paths.Length == 1 && Bytes(paths[0]) is { Ok: false } no)
        {
            bytes.Remove(paths[0]);
            return FaultTexts.Of(no.Fault);
        }

        household.KeepStatements(kept with { Files = kept.Files.AddRange(added.Select(path => new StartStatement(path, []))) });
        Read();
        return null;
    }

    /// <summary>Takes a file out; what was taken of it stays in the household.</summary>
    public void TakeOut(int file)
    {
        StartStatements kept = household.Statements;
        bytes.Remove(kept.Files[file].Path);
        household.KeepStatements(kept with { Files = kept.Files.RemoveAt(file) });
        Read();
    }

    /// <summary>Answers a file's question.</summary>
    public void Answer(int file, int choice)
    {
        StartStatements kept = household.Statements;
        StartStatement one = kept.Files[file];
        household.KeepStatements(kept with { Files = kept.Files.SetItem(file, one with { Answers = one.Answers.Add(choice) }) });
        Read();
    }

    private Result<byte[]> Bytes(string path)
    {
        if (!bytes.TryGetValue(path, out Result<byte[]> known))
        {
            known = InputFile.Bytes(path, StatementInput.MostBytes);
            bytes[path] = known;
        }

        return known;
    }

    private void Read()
    {
        ImmutableArray<StartStatement> kept = household.Statements.Files;
        Result<byte[]>[] read = [.. kept.Select(file => Bytes(file.Path))];
        int[] there = [.. Enumerable.Range(0, kept.Length).Where(i => read[i].Ok)];
        ImmutableArray<StatementFile> found = StatementSet.Read(
            [.. there.Select(i => ((ReadOnlyMemory<byte>)read[i].Value!, kept[i].Answers))],
            new ReadingOptions { Currency = household.Draft.Settings.Currency, Today = household.Today, Profiles = household.Readings });
        var nothing = new StatementFile([], []);
        All =
        [
            .. kept.Select((file, i) => new LearningFile(
                file,
                read[i].Ok ? null : FaultTexts.Of(read[i].Fault!),
                read[i].Ok ? found[Array.IndexOf(there, i)] : nothing)),
        ];
        Lessons = LessonFinder.Of(Statements, household.Draft.Settings.Currency);
    }
}
