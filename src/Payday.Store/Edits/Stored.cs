namespace Payday.Store.Edits;

/// <summary>A record, or its document, with the digest of the document.</summary>
internal readonly record struct Stored<T>(T Record, Digest Digest);
