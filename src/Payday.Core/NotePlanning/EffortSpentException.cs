namespace Payday.Core.NotePlanning;

/// <summary>A search has met the end of its <see cref="Effort"/>. It never leaves the planner.</summary>
internal sealed class EffortSpentException : Exception;
