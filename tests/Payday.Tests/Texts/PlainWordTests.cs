using System.Text.RegularExpressions;
using Payday.Tests.House;

namespace Payday.Tests.Texts;

/// <summary>One plain word for one idea: the words that people didn't understand stand in no text that a person reads.</summary>
public class PlainWordTests
{
    // The words of the code and of the household file that screens once had, and what they say now.
    private static readonly (string Old, string Plain)[] Words =
    [
        (@"\bheld\b|\bhold(s|ing)? back\b|\bto hold\b(?! )", "set aside, in the account, compared with"),
        (@"\bkept[ -]back\b|\bkeeps? (it )?back\b", "not in notes"),
        (@"\bowed[ -]back\b|\bowes?\b[^.]{0,20}\bback\b", "to pay back"),
        (@"\bas (they|it) falls?\b", "when due"),
        (@"\blevel\b", "even; of a reserve full at"),
        (@"\bfloors?\b", "at least"),
        (@"\bmovements?\b", "ledger line"),
        (@"\b(take|takes|taking|taken|took) (it |this |that |them |one )?out\b", "remove, clear, withdraw, take from"),
        (@"\bmov(e|es|ed|ing) on\b", "goes to"),
        (@"\bpapers\b", "slip and sheet"),
        (@"\bcount open\b", "not counted since"),
        (@"(?<!is |year |months? |it |0 |^ )\b(later|open)$", "not yet, not in notes"),
    ];

    // What is no text of the program, or keeps its word.
    private static readonly Regex Kept = new(
        string.Join('|', [
            @"[""`](held|level|floor|papers)[""`]", // fields of the household file, in quotes
            @"\.(held|level|floor)\b|\bheld(?=, line \d)", // places in it and in a calculator's file
            @"(?<=write one of [^.]*)\b(held|level|floor)\b", // its fields, listed
            @"--movement|`?level`?(?=\\?\||,? or |, an even| for even)|`?as-they-fall`?", // options
            @"""kept-back""|(?<=^0, )kept back|^moved on$", // names that aren't free, and what older books say
            @"\b[Oo]ne level back\b", // of screens
            @"\bPapers\b", // a pot of the tests' household
        ]));

    private static readonly string[] Folders =
    [
        "Charts", "Commands", "Faults", "Screens", "Slips", "Sentences", "Texts",
    ];

    [Fact]
    public void Goldens_OfAllThatAPersonReads_HaveNoneOfTheOldWords()
    {
        string[] files = [.. Folders.SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "Payday.Tests", folder), "*.txt", SearchOption.AllDirectories))
            .Where(file => Path.GetDirectoryName(file)!.EndsWith("Golden", StringComparison.Ordinal))];
        Assert.True(files.Length > 150, $"{files.Length} goldens");
        None(files.SelectMany(file => Found(Path.GetFileName(file), File.ReadLines(file).Where(IsText))));
    }

    [Fact]
    public void Readme_HasNoneOfTheOldWords() =>
        None(Found("README.md", File.ReadLines(Path.Combine(Repository.Root, "README.md"))));

    // Sentences that no golden shows are in the code all the same.
    [Fact]
    public void Texts_InTheCode_HaveNoneOfTheOldWords()
    {
        string[] folders = ["src/Payday/Texts", "src/Payday/Screens", "src/Payday/Reports", "src/Payday/Commands", "src/Payday/Slips", "src/Payday.Store/Texts", "src/Payday.Store/Json"];
        string[] files = [.. folders.SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*.cs", SearchOption.AllDirectories))];
        Assert.True(files.Length > 300, $"{files.Length} files");
        None(files.SelectMany(file => Found(Path.GetFileName(file), File.ReadLines(file).SelectMany(Literals))));
    }

    // The digests, names of faults and scripts of a golden are no text of the program, nor is what stands as JSON.
    private static bool IsText(string line) => !line.StartsWith('{') && !Regex.IsMatch(line, @"^\d{4}-\d\d-\d\d [a-z@]");

    // Of a text with values in it the values are code.
    private static IEnumerable<string> Literals(string line) => line.TrimStart().StartsWith('/')
        ? []
        : Regex.Matches(line, @"""(?:\\.|[^""\\])*""").Select(text => Regex.Replace(Regex.Replace(text.Value[1..^1], @"\{[^{}]*\}", "0"), @"\{[^{}]*$|^[^{}]*\}", "").Replace("\\\"", "\"", StringComparison.Ordinal)).Where(text => text.Contains(' ', StringComparison.Ordinal));

    private static void None(IEnumerable<string> found)
    {
        string[] all = [.. found];
        Assert.True(all.Length == 0, string.Join('\n', all));
    }

    private static IEnumerable<string> Found(string name, IEnumerable<string> lines) => lines
        .Select(line => Kept.Replace(line, "").TrimEnd())
        .SelectMany(line => Words.Where(word => Regex.IsMatch(line, word.Old, RegexOptions.IgnoreCase)).Select(word => $"{name}: {line.Trim()} (say: {word.Plain})"));
}
