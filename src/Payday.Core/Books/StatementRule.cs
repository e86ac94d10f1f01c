namespace Payday.Core.Books;

/// <summary>What lines like this one become, kept by the person.</summary>
/// <param name="Words">The words that a line has to have, all of them, or its mandate; no two rules have the same.</param>
/// <param name="Target">What such a line becomes.</param>
public sealed record StatementRule(string Words, LineTarget Target);
