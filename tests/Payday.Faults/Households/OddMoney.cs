using System.Globalization;

namespace Payday.Faults.Households;

/// <summary>Amounts of one currency: its pieces, and a size that most amounts are of.</summary>
/// <param name="Code">ISO 4217.</param>
/// <param name="Decimals">How many decimals its minor unit has.</param>
/// <param name="Notes">In minor units.</param>
/// <param name="Size">What a week of food costs, say, in minor units.</param>
internal sealed record OddMoney(string Code, int Decimals, long[] Notes, long Size)
{
    private static readonly (string Code, int Decimals, long[][] Notes)[] Kinds =
    [
        ("USD", 2, [[100_00, 50_00, 20_00, 10_00, 5_00], [50_00, 20_00], [20_00], [25, 10, 5, 1]]),
        ("EUR", 2, [[200_00, 100_00, 50_00, 20_00, 10_00, 5_00], [7_03, 3_01], [500_00]]),
        ("JPY", 0, [[10_000, 5_000, 2_000, 1_000], [500, 100, 50, 10, 5, 1]]),
        ("KWD", 3, [[20_000, 10_000, 5_000, 1_000, 500, 250], [1_234, 777]]),
    ];

    public static OddMoney Pick(Random chance)
    {
        (string code, int decimals, long[][] notes) = Kinds[chance.Next(Kinds.Length)];
        long one = Power(decimals);
        long size = chance.Next(10) switch
        {
            0 => 1,
            1 => 1_000_000_000_000 * one,
            2 => 3 * one,
            _ => 150 * (decimals == 0 ? 100 : one),
        };
        return new OddMoney(code, decimals, notes[chance.Next(notes.Length)], size);
    }

    /// <summary>An amount that a person would enter, from nothing at all to thrice the usual size; now and then just one minor unit.</summary>
    public long Amount(Random chance, double least = 0) => chance.Next(12) switch
    {
        0 => Math.Max(1, (long)(Size * least)),
        1 => Math.Max(1, (long)(Size * Math.Max(least, 1)) / Notes[^1] * Notes[^1]),
        _ => Math.Max(1, (long)(Size * (least + (chance.NextDouble() * 3)))),
    };

    /// <summary>The amount as the household file and <c>--json</c> write it.</summary>
    public string Plain(long minor)
    {
        long one = Power(Decimals);
        (long whole, long rest) = Math.DivRem(Math.Abs(minor), one);
        string digits = Decimals == 0 ? "" : "." + rest.ToString(CultureInfo.InvariantCulture).PadLeft(Decimals, '0');
        return string.Create(CultureInfo.InvariantCulture, $"{(minor < 0 ? "-" : "")}{whole}{digits}");
    }

    /// <summary>Minor units from such a text.</summary>
    public long Minor(string plain) => (long)(decimal.Parse(plain, NumberStyles.Number, CultureInfo.InvariantCulture) * Power(Decimals));

    private static long Power(int decimals) => (long)Math.Pow(10, decimals);
}
