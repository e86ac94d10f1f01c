namespace Payday.Faults;

/// <summary>One damage to one file, or to two that change places.</summary>
internal static class Damage
{
    private const int Page = 8192;

    /// <summary>Does a damage of a random kind.</summary>
    /// <param name="random">What chooses.</param>
    /// <param name="files">The files by name; at least two of them.</param>
    /// <param name="ages">The same at earlier times.</param>
    /// <param name="name">Which file.</param>
    /// <returns>What was done, in words, and which files are not what they were.</returns>
    public static (string What, string[] Hit) Do(Random random, Dictionary<string, byte[]> files, List<Dictionary<string, byte[]>> ages, string name)
    {
        byte[] bytes = [.. files[name]];
        int kind = random.Next(10);
        if (bytes.Length == 0 && kind is < 5 or 9)
        {
            files[name] = new byte[random.Next(1, 200)];
            random.NextBytes(files[name]);
            return ("filled with bytes", [name]);
        }

        switch (kind)
        {
            case 0 or 1:
                bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
                files[name] = bytes;
                return ("one bit flipped", [name]);
            case 2:
                random.NextBytes(Piece(random, bytes, random.Next(1, 200)));
                files[name] = bytes;
                return ("bytes overwritten", [name]);
            case 3:
                Piece(random, bytes, Page).Clear();
                files[name] = bytes;
                return ("a page of zeros", [name]);
            case 4:
                files[name] = bytes[..random.Next(bytes.Length)];
                return ("cut short", [name]);
            case 5:
                files.Remove(name);
                return ("deleted", [name]);
            case 6 when ages[random.Next(ages.Count)].TryGetValue(name, out byte[]? old):
                files[name] = old;
                return ("an older copy", [name]);
            case 7:
                string[] others = [.. files.Keys.Where(key => key != name).Order(StringComparer.Ordinal)];
                string other = others[random.Next(others.Length)];
                (files[name], files[other]) = (files[other], files[name]);
                return ("swapped for another", [name, other]);
            case 8:
                int dot = name.IndexOf('.', StringComparison.Ordinal);
                files[$"{name[..dot]} (2){name[dot..]}"] = bytes;
                return ("a copy beside it", []);
            default:
                files[name] = [.. bytes, .. bytes];
                return ("twice in its file", [name]);
        }
    }

    private static Span<byte> Piece(Random random, byte[] bytes, int length)
    {
        int at = random.Next(bytes.Length);
        return bytes.AsSpan(at, Math.Min(length, bytes.Length - at));
    }
}
