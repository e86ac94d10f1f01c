using Payday.Screens.Shell;

namespace Payday.Screens.Setup;

/// <summary>Leads from one part of setting up to the next.</summary>
internal interface ISetupGuide
{
    /// <summary>Where the person is, e.g. <c>4 of 8</c>.</summary>
    string Here { get; }

    /// <summary>What Right leads to, in a word or two.</summary>
    string NextName { get; }

    /// <summary>To the next part; this one is done with for now.</summary>
    Way Next();
}
