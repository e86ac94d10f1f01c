namespace Payday.Tests.Commands;

/// <summary>What became of a command line.</summary>
internal sealed record Ran(int Exit, string Out, string Error)
{
    public string[] Lines => Out.TrimEnd('\n').Split('\n');

    /// <summary>The answer of one that went well.</summary>
    public Ran Fine()
    {
        Assert.Equal((0, ""), (Exit, Error));
        return this;
    }
}
