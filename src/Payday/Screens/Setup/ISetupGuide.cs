using Payday.Screens.Shell;

namespace Payday.Screens.Setup;

/// <summary>Leads from one part of setting up to the next.</summary>
internal interface ISetupGuide
{
    /// <summary>Where the person is, e.g. <c>4 of 8</c>.</summary>
    string Here { get; }

    /// <summary>What Right leads to, in a word or two.</summary>
    string NextName { get; }

    /// <summary>What Left leads to, in a word or two.</summary>
    string BeforeName { get; }

    /// <summary>To the next part; this one is done with for now.</summary>
    Way Next();

    /// <summary>To the part before, or from the first one to the list of parts.</summary>
    Way Before();
}
