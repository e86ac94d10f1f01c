namespace Payday.Store.Journals;

/// <summary>A place in a journal, after one of its lines.</summary>
/// <param name="Number">The number of the line.</param>
/// <param name="Sha">Its hash.</param>
/// <param name="Offset">Where in the file the next one begins, in bytes.</param>
internal sealed record JournalPlace(long Number, string Sha, long Offset);
