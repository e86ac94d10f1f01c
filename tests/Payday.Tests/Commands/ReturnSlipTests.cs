using NodaTime;
using Payday.Tests.Slips;
using UglyToad.PdfPig;

namespace Payday.Tests.Commands;

/// <summary>The deposit slip of a cash return, by command as the screen prints it.</summary>
public sealed class ReturnSlipTests
{
    [Fact]
    public void Slip_OfAReturn_IsThePaperAlone()
    {
        using TestShell shell = Owing();

        Golden.Equal("return-slip", shell.Run("return", "--slip", "--width", "42").Fine().Lines);
        Assert.Equal(shell.Run("return", "--slip", "--width", "42").Out, shell.Run("return", "--width", "42").Out);
        Assert.Contains("15.00", shell.Run("return", "--json").Fine().Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A6", 298)]
    [InlineData("Letter", 612)]
    public void Pdf_OfAReturn_HasItsSize(string paper, int width)
    {
        using TestShell shell = Owing();
        string file = shell.In("deposit.pdf");

        Assert.Equal($"Written to {file}, {paper}.", shell.Run("return", "--pdf", file, "--paper", paper).Fine().Lines[0]);

        using PdfDocument pdf = PdfDocument.Open(file);
        Assert.Equal(width, (int)Math.Round(pdf.GetPage(1).Width));
        Assert.Contains("Deposit", pdf.GetPage(1).Text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(1, shell.Run("return", "--pdf", file).Exit);
        shell.Run("return", "--pdf", file, "--replace", "--print-size", "large").Fine();
    }

    // Nothing is owed any less by a slip.
    [Fact]
    public void Slip_OfAReturn_StoresNothing()
    {
        using TestShell shell = Owing();
        byte[] before = File.ReadAllBytes(shell.Data.Journal);

        shell.Run("return", "--pdf", shell.In("deposit.pdf"), "--on", "2026-03-14").Fine();

        Assert.Equal(before, File.ReadAllBytes(shell.Data.Journal));
    }

    [Theory]
    [InlineData(2, "The slip comes first", "--confirm", "--slip")]
    [InlineData(2, "The slip comes first", "--undo", "--pdf", "x.pdf")]
    [InlineData(2, "Choose one of --pdf and --print.", "--pdf", "x.pdf", "--print")]
    [InlineData(1, "No cash goes to the bank, so there is no slip.", "--slip", "--leave", "Food")]
    public void Slip_AskedForWrongly_IsRefused(int exit, string sentence, params string[] words)
    {
        using TestShell shell = Owing();

        Ran ran = shell.Run(["return", .. words]);

        Assert.Equal((exit, ""), (ran.Exit, ran.Out));
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
    }

    // What was decided line by line, or on the screen, is what the slip and the ledger get; --anew forgets it.
    [Fact]
    public void Return_DecidedBefore_IsTakenUp()
    {
        using TestShell shell = Owing();
        shell.Run("spend", "Fares", "4.10").Fine();
        Assert.Contains("Food", shell.RunOn("no\nyes\nno\n", "ask", "return").Out, StringComparison.Ordinal);

        Assert.DoesNotContain(shell.Run("return", "--slip").Fine().Lines, line => line.Contains("20.00", StringComparison.Ordinal));
        Assert.Contains(shell.Run("return", "--slip", "--anew").Fine().Lines, line => line.Contains("20.00", StringComparison.Ordinal));
        shell.Run("return", "--confirm").Fine();

        Assert.Contains("15.00 to pay back", shell.Run("status").Out, StringComparison.Ordinal);
        Assert.Contains("15.00", string.Join('\n', shell.Run("return", "--slip").Fine().Lines), StringComparison.Ordinal);
    }

    private static TestShell Owing()
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Run("fill", "--done").Fine();
        shell.Today = new LocalDate(2026, 3, 12);
        shell.Run("spend", "Food", "12.40").Fine();
        return shell;
    }
}
