namespace Payday.Core.NotePlanning;

/// <summary>Arithmetic of whole numbers.</summary>
internal static class Whole
{
    /// <summary>The greatest common divisor of two numbers that are zero or more.</summary>
    public static long Gcd(long left, long right)
    {
        while (right != 0)
        {
            (left, right) = (right, left % right);
        }

        return left;
    }

    /// <summary>The rest of a division, zero or more also for a negative number.</summary>
    public static long Mod(long number, long divisor)
    {
        long rest = number % divisor;
        return rest < 0 ? rest + divisor : rest;
    }

    /// <summary>The smallest number from <paramref name="least"/> on that leaves the same rest as <paramref name="like"/>.</summary>
    public static long Next(long least, long like, long divisor) => least + Mod(like - least, divisor);
}
