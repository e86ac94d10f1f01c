using NodaTime;
using Payday.Tests.Slips;
using Payday.Text;

namespace Payday.Tests.Commands;

/// <summary>What <c>payday due</c> tells, whole.</summary>
public sealed class DueGoldenTests
{
    [Fact]
    public void Due_EarlyLateInPartAndFreed_IsAsRecorded()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = new LocalDate(2026, 3, 13);
        Equal(shell, "due", 0, "due");
        Equal(shell, "due-paid", 0, "due", "sofa card", "--on", "2026-03-12");
        Equal(shell, "due-part", 0, "due", "Fiddle lessons", "20");
        Equal(shell, "due-freed", 0, "due", "Fiddle lessons", "--free");
        Equal(shell, "due-undo-not-yet", 1, "due", "--undo", "2");
        Equal(shell, "due-undo", 0, "due", "--undo", "3");
        Equal(shell, "due-too-much", 1, "due", "Rent", "90000", "--due", "2026-04-01");
        Equal(shell, "due-more-than-owed", 1, "due", "Dental plan", "541");
        Equal(shell, "due-not-open", 1, "due", "Rent", "--due", "2026-04-02");
        Equal(shell, "due-zero", 1, "due", "Rent", "0");
        Equal(shell, "due-to-come", 2, "due", "Rent", "--on", "2026-03-14");
        Equal(shell, "due-unknown", 2, "due", "Rant");
        Equal(shell, "due-afterwards", 0, "due");
        Equal(shell, "due-overview", 0, "show");
        Equal(shell, "due-extra-paid", 0, "due", "dental plan", "--extra", "yes");
        Assert.Contains("\"paid\":true", shell.Run("due", "Dental plan", "--extra", "yes", "--json").Fine().Out, StringComparison.Ordinal);
        Assert.DoesNotContain("extra", shell.Run("due").Fine().Out, StringComparison.Ordinal);
        Equal(shell, "due-extra-to-pay", 0, "due", "Dental plan", "--extra", "no");
        Equal(shell, "due-extra-none", 1, "due", "Rent", "--extra", "yes");
        Equal(shell, "due-extra-alone", 2, "due", "--extra", "yes");
        Equal(shell, "due-extra-amount", 2, "due", "Dental plan", "20", "--extra", "yes");
    }

    [Fact]
    public void Due_InJson_HasEveryFigure()
    {
        using TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = new LocalDate(2026, 3, 13);
        Assert.Equal(
            "{\"version\":1,\"stored\":true,\"dues\":[{\"kind\":\"bill\",\"name\":\"Fiddle lessons\",\"due\":\"2026-03-13\",\"toPay\":\"25.00\",\"paid\":\"20.00\",\"has\":\"25.00\"}],"
            + "\"paid\":[{\"number\":1,\"kind\":\"bill\",\"name\":\"Fiddle lessons\",\"due\":\"2026-03-13\",\"on\":\"2026-03-13\",\"amount\":\"20.00\",\"freed\":false}],"
            + "\"toPayYourself\":[{\"debt\":\"dental-plan\",\"name\":\"Dental plan\",\"amount\":\"246.46\",\"since\":\"2026-03-06\",\"paid\":false}]}",
            shell.Run("due", "Fiddle lessons", "20", "--json").Fine().Out.TrimEnd());
    }

    private static void Equal(TestShell shell, string golden, int exit, params string[] line)
    {
        Ran ran = shell.Run(line);
        string text = ran.Out + ran.Error;
        Assert.True(exit == ran.Exit, $"{golden}: {text}");
        string[] lines = text.TrimEnd('\n').Split('\n');
        Assert.All(lines, one => Assert.InRange(TextColumns.Width(one), 0, golden is "due-too-much" or "due-unknown" ? 400 : 120));
        Golden.Equal(golden, lines);
    }
}
