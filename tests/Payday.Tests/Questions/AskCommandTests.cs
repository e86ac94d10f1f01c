using System.Text;
using Payday.Commands;
using Payday.Store;
using Payday.Store.Folders;
using Payday.Tests.Commands;

namespace Payday.Tests.Questions;

/// <summary><c>payday ask</c> from the shell, and where it is chosen by itself.</summary>
public sealed class AskCommandTests
{
    [Fact]
    public void Ask_PastedAnswers_AnswerOneQuestionEach()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.RunOn("payday\r\n2200\r\n\r\n\r\n70\r\n", "ask").Fine();

        Assert.Equal("Fernhollow house, Fri 6 Mar 2026.", ran.Lines[0]);
        Assert.Contains("Odette, joinery: 2,200.00.", ran.Lines);
        Assert.Contains("After-school club: 70.00, to pay.", ran.Lines);
        Assert.Equal("Everything is kept; payday ask goes on here.", ran.Lines[^1]);
        Assert.StartsWith("Phones, ", shell.RunOn("stop\n", "ask").Fine().Lines[^2], StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithoutAnyInput_ChangesNothing()
    {
        using TestShell shell = TestShell.WithDemo();
        string before = shell.Run("show", "--json").Out;

        Assert.Equal(0, shell.Run("ask").Exit);
        Assert.Equal(before, shell.Run("show", "--json").Out);
        Assert.Equal(["Checked: 1 change, 24 ledger lines, 0 closed paydays, 0 backups.", "Nothing is wrong."], shell.Run("check").Fine().Lines);
    }

    [Fact]
    public void Ask_ForSomething_BeginsWithIt()
    {
        using TestShell shell = TestShell.WithDemo();

        Assert.Contains("Account against the bank.", shell.Run("ask", "bank").Fine().Lines);
        Assert.Contains("Argument 'dance' not recognized", shell.Run("ask", "dance").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_ForAScript_IsWrongUse()
    {
        using TestShell shell = TestShell.WithDemo();

        Ran ran = shell.Run("ask", "--json");

        Assert.Equal(2, ran.Exit);
        Assert.Contains("payday ask is for a person; scripts have payday run", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WithoutAHousehold_SaysHowToGetOne()
    {
        using var shell = new TestShell();

        Assert.Contains("There is no household in", shell.Run("ask").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_WhereAnotherHasTheFolder_SaysSoInASentence()
    {
        using TestShell shell = TestShell.WithDemo();
        using var other = BookStore.Open(new StoreFolder(shell.Data.Path));

        Ran ran = shell.Run("ask");

        Assert.Equal((1, ""), (ran.Exit, ran.Out));
        Assert.Single(ran.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Payday_AtAPlainTerminal_AsksByItself(bool isPlain)
    {
        using TestShell shell = TestShell.WithDemo();

        string said = At(shell, isPlain, "stop\n");

        Assert.Equal(isPlain, said.Contains("What now? payday proposed", StringComparison.Ordinal));
    }

    [Fact]
    public void Demo_AtAPlainTerminal_AsksAndThrowsAllAway()
    {
        using var shell = new TestShell();

        string said = At(shell, true, "\n2000\nstop\n", "demo");

        Assert.Contains("Odette, joinery: 2,000.00.", said, StringComparison.Ordinal);
        Assert.EndsWith("What was tried in the demo household is thrown away.\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_InputThatIsNoText_KeepsWhatWasTakenAndSaysSo()
    {
        using TestShell shell = TestShell.WithDemo();
        using var error = new StringWriter();
        using var output = new StringWriter();
        using var input = new OneByOne("payday\n2200\n");

        int exit = CommandLine.Run(["ask"], new CommandShell(output, error, input, () => shell.Today, () => shell.Data));

        Assert.Equal(1, exit);
        Assert.StartsWith("payday: What was typed there is no text in UTF-8.", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("2,200.00", shell.Run("run").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Ask_OutputThatIsGone_KeepsWhatWasTaken()
    {
        using TestShell shell = TestShell.WithDemo();
        using var error = new StringWriter();
        using var input = new StringReader("payday\n2200\n\n");
        using var output = new EndingWriter(7);

        int exit = CommandLine.Run(["ask"], new CommandShell(output, error, input, () => shell.Today, () => shell.Data));

        Assert.Equal(0, exit);
        Assert.StartsWith("payday: It is done. The answer can't be written to standard output", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("2,200.00", shell.Run("run").Out, StringComparison.Ordinal);
        Assert.Contains("Did anything else come in? Nothing proposed", string.Join(' ', shell.Run("ask").Lines), StringComparison.Ordinal);
    }

    private static string At(TestShell shell, bool isPlain, string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter();
        using var reader = new StringReader(input);
        Assert.Equal(0, CommandLine.Run(args, new CommandShell(output, error, reader, () => shell.Today, () => shell.Data) { HasPlainTerminal = isPlain }));
        Assert.Equal("", error.ToString());
        return output.ToString();
    }

    // Text, and then bytes that are none.
    private sealed class OneByOne(string text) : TextReader
    {
        private int at;

        public override int Read() => at < text.Length ? text[at++] : throw new DecoderFallbackException();
    }

    // Takes some lines and then is closed, as a terminal that goes.
    private sealed class EndingWriter(int lines) : StringWriter
    {
        private int left = lines;

        public override void WriteLine(string? value)
        {
            if (left-- <= 0)
            {
                throw new IOException("The terminal is gone.");
            }
        }
    }
}
