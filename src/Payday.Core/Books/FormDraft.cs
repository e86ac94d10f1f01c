using System.Collections.Immutable;

namespace Payday.Core.Books;

/// <summary>A form begun: what was typed so far, so that a cut connection loses none of it.</summary>
/// <param name="Form">The name of the form; no two drafts have the same.</param>
/// <param name="Texts">By field: what was typed, as it was typed.</param>
public sealed record FormDraft(string Form, ImmutableSortedDictionary<string, string> Texts);
