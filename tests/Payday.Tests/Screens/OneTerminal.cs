namespace Payday.Tests.Screens;

/// <summary>Tests that use the library's driver run one after the other: some of its state is the process's.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OneTerminal
{
    public const string Name = "terminal";
}
