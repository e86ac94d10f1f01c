namespace Payday.Faults;

/// <summary>One damage to one file.</summary>
internal static class Damage
{
    private const int Page = 8192;

    /// <summary>Does a damage of a random kind.</summary>
    /// <returns>What was done, in words.</returns>
    public static string Do(Random random, Dictionary<string, byte[]> files, List<Dictionary<string, byte[]>> ages, string name)
    {
        byte[] bytes = [.. files[name]];
        switch (random.Next(8))
        {
            case 0 or 1:
                bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
                files[name] = bytes;
                return "one bit flipped";
            case 2:
                random.NextBytes(Piece(random, bytes, random.Next(1, 200)));
                files[name] = bytes;
                return "bytes overwritten";
            case 3:
                Piece(random, bytes, Page).Clear();
                files[name] = bytes;
                return "a page of zeros";
            case 4:
                files[name] = bytes[..random.Next(bytes.Length)];
                return "cut short";
            case 5:
                files.Remove(name);
                return "deleted";
            case 6 when ages[random.Next(ages.Count - 1)].TryGetValue(name, out byte[]? old):
                files[name] = old;
                return "an older copy";
            case 7 when files.TryGetValue(name == "payday.db" ? "payday.journal" : "payday.db", out byte[]? other):
                files[name] = other;
                return "swapped for the other";
            default:
                files[name] = [.. bytes, .. bytes];
                return "twice in its file";
        }
    }

    private static Span<byte> Piece(Random random, byte[] bytes, int length)
    {
        int at = random.Next(bytes.Length);
        return bytes.AsSpan(at, Math.Min(length, bytes.Length - at));
    }
}
