namespace Payday.Tests.Commands;

/// <summary>A shell on the demo household, shared by tests that change nothing in it.</summary>
public sealed class DemoShell : IDisposable
{
    private readonly Lazy<TestShell> closed = new(() =>
    {
        TestShell shell = TestShell.WithDemo();
        shell.Run("run", "--accept").Fine();
        shell.Today = new NodaTime.LocalDate(2026, 3, 9);
        return shell;
    });

    private readonly Lazy<TestShell> begun = new(TestShell.WithDemo);

    /// <summary>With one payday closed, three days later.</summary>
    internal TestShell Closed => closed.Value;

    /// <summary>As imported.</summary>
    internal TestShell Begun => begun.Value;

    public void Dispose()
    {
        foreach (Lazy<TestShell> shell in (Lazy<TestShell>[])[closed, begun])
        {
            if (shell.IsValueCreated)
            {
                shell.Value.Dispose();
            }
        }
    }
}
