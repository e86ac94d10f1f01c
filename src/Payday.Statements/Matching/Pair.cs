namespace Payday.Statements.Matching;

/// <summary>A possible pair of an assignment.</summary>
/// <param name="Left">The one, from 0.</param>
/// <param name="Right">The other, from 0.</param>
/// <param name="Points">What speaks for it, above zero.</param>
internal readonly record struct Pair(int Left, int Right, int Points);
