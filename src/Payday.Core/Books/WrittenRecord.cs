namespace Payday.Core.Books;

/// <summary>The record that a line of the bank's was written down as.</summary>
/// <param name="Kind">Which sort.</param>
/// <param name="Number">Its number among those.</param>
public sealed record WrittenRecord(WrittenKind Kind, long Number);
