using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Questions;

/// <summary>What is said, whole: it is read aloud.</summary>
public sealed class AskGoldenTests
{
    // Enter for each question of the demo's payday, and yes at none: the last proposal closes it.
    private const int Enough = 60;

    [Fact]
    public void Ask_WithEnterAlone_SaysTheWholeRoutineInPlainLines()
    {
        using var book = new AskedBook();
        string[] said = book.AskFor("payday", [.. Enumerable.Repeat("", Enough).TakeWhile(_ => book.Book.Closed.IsEmpty)]);
        int end = Array.FindIndex(said, line => line.StartsWith("The payday is closed.", StringComparison.Ordinal));
        Assert.True(end > 0);

        IsPlain(said);
        Golden.Equal("routine", said.Take(end + 2));
    }

    [Fact]
    public void Ask_WithChangesHelpAndMistakes_IsAsRecorded()
    {
        using var book = new AskedBook();
        string[] said = book.SaidAndAnswered(
            "payday", "?", "2200", "Gift=50", "", "", "70 paid", "junk", "paid", "back", "unpaid", "", "", "", "later", "when due", "",
            "40", "paid", "390", "?", "back", "-1", "400", "stop");

        IsPlain(said);
        Golden.Equal("changes", said);
    }

    [Fact]
    public void Ask_OfEveryPart_IsAsRecorded()
    {
        using var book = new AskedBook();
        book.Closed();
        book.Today = new(2026, 3, 7);
        List<string> said = [.. book.SaidAndAnswered("?", "fill", "", "skip", "no", "stop")];
        said.AddRange(book.SaidAndAnswered("menu", "menu", "card", "Bread", "", "12.40", "", "yesterday", "", "", "bills", "?", "no", "?", "phones", "70", "", "", "no", "stop"));
        book.Today = new(2026, 3, 12);
        said.AddRange(book.SaidAndAnswered(
            "count", "", "21.50", "buffer", "45", "back", "missing Lost coin=1", "46", "Old coat", "", "3", "stays", "500", "?", "", "back", "uncounted", "15", "", "",
            "menu", "count", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", ""));
        said.AddRange(book.SaidAndAnswered("menu", "return", "?", "", "yes", "bank", "", "4000", "yes", "all", "Not known", "yes"));
        said.AddRange(book.SaidAndAnswered("move", "fuel", "clothes", "2", "", "none", "", "", "entry", "", "3.20", "buffer", "", "Interest", "", "", "received", "menu", "stop"));

        IsPlain(said);
        Golden.Equal("parts", said);
    }

    // No rule, no box, no block, no mark, no control character, and lines that no terminal of 80 columns breaks.
    private static void IsPlain(IEnumerable<string> said) => Assert.All(said, line =>
    {
        Assert.InRange(TextColumns.Width(line), 1, 79);
        Assert.DoesNotContain(line, sign => char.IsControl(sign) || sign is >= '\u2010' and <= '\u2bff' or '|' or '_' or '~' or '\u00b7');
        Assert.DoesNotContain("--", line.Replace(" --undo", "", StringComparison.Ordinal).Replace(" --filling", "", StringComparison.Ordinal).Replace(" --payday", "", StringComparison.Ordinal).Replace("payday --help", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("==", line, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", line, StringComparison.Ordinal);
    });
}
