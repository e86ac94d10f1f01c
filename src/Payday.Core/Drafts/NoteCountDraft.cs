namespace Payday.Core.Drafts;

/// <summary>How many notes there are of a value, as it was entered.</summary>
/// <param name="Note">The value, in whole units.</param>
/// <param name="Count">How many.</param>
public readonly record struct NoteCountDraft(decimal Note, int Count);
