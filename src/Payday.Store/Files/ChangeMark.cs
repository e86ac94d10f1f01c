namespace Payday.Store.Files;

/// <summary>Which change it is, for a person.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When it was written, as the clock had it: ISO 8601, in UTC.</param>
public sealed record ChangeMark(long Number, string At);
