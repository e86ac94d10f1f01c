using Payday.Store.Files;

namespace Payday.Store.Checks;

/// <summary>Something that a check found wrong.</summary>
/// <param name="Part">Which part of the store.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Since">Since when, as far as can be told; null where it can't.</param>
/// <param name="Then">What will be done about it, or what to do.</param>
public sealed record Finding(CheckPart Part, StoreFault What, FindingSince? Since, Remedy Then);
