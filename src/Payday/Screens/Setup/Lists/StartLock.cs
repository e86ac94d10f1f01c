using Payday.Screens.Setup.Fields;

namespace Payday.Screens.Setup.Lists;

/// <summary>Why what was there at the start can't be changed any more.</summary>
internal static class StartLock
{
    /// <summary>The reason, or null where it still can.</summary>
    public static string? SinceStart<TPart>(SetupFacts facts, TPart part) =>
        facts.HasHistory ? "It is part of the ledger since a payday was closed, and stays as it is." : null;
}
