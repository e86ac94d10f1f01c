namespace Payday.Core.ItemLines;

/// <summary>What can be read two ways.</summary>
/// <param name="Part">The part of the line, as it was written.</param>
/// <param name="One">One way to write what it may mean.</param>
/// <param name="Other">The other way.</param>
internal sealed record Doubt(string Part, string One, string Other);
