using Payday.Screens.Setup;

namespace Payday.Screens.Start;

/// <summary>A part of setting up for the first time.</summary>
/// <param name="Part">The part.</param>
/// <param name="IsNeeded">Whether there is no household without it.</param>
/// <param name="IsFilled">Whether it holds what it must.</param>
internal sealed record GuidePart(SetupPart Part, bool IsNeeded, Func<bool> IsFilled);
