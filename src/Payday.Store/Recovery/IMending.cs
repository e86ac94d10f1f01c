using System.Collections.Immutable;
using Payday.Store.Files;

namespace Payday.Store.Recovery;

/// <summary>What is to be done to a folder, decided before anything of it is: a check can say what mending would do, and promise no more.</summary>
internal interface IMending
{
    /// <summary>Does it. Killed at any moment, the next opening decides and does it anew.</summary>
    /// <returns>What was wrong and was done; none where there was nothing to tell.</returns>
    ImmutableArray<StoreFault> Do();
}
