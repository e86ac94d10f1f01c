namespace Payday.Store.Files;

/// <summary>Which file it is, whatever its name: the same one only where all three are the same.</summary>
/// <param name="Major">The number of its device, first half.</param>
/// <param name="Minor">Second half.</param>
/// <param name="Inode">The number of the file on it.</param>
public readonly record struct FileIdentity(uint Major, uint Minor, ulong Inode);
