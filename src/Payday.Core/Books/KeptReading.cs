using System.Collections.Immutable;

namespace Payday.Core.Books;

/// <summary>How a file of the bank's without a format of its own is read, found or answered once.</summary>
/// <param name="Header">The header of the files it is for; no two have the same.</param>
/// <param name="Answers">By what was asked: the answer.</param>
public sealed record KeptReading(string Header, ImmutableSortedDictionary<string, string> Answers);
