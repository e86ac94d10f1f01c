using System.Globalization;
using System.Text;

namespace Payday.Faults.Monkeys;

/// <summary>What somebody does who knows nothing: keys at random, now and then some that lead on, and all that a terminal may send by mistake.</summary>
/// <param name="random">By a seed, so that it can be done again.</param>
internal sealed class Monkey(Random random)
{
    private const string PasteBegins = "\e[200~";
    private const string PasteEnds = "\e[201~";

    private static readonly string[] Moves = ["\e[A", "\e[B", "\e[C", "\e[D", "\e[5~", "\e[6~", "\eOA", "\eOB", "\t", "\e[Z", "\e[H", "\e[F", "\e[1;2A", "\e[1;2B", "\e[1;5C"];

    private static readonly string[] Words =
    [
        "12.50", "0", "1000", "-5", "99999999999999", "123456789012345678", "12.50+3", "0.01", "100+", "abc", "today", "yesterday", "2026-03-12", "12.3.2026", "2026-13-45",
        "2200-01-01", "0001-01-01", "Gift=50", "=", "Lost coin=0.50", "Rent", "食費 é", "e\u0301\u0301\u0301", "\u202Eabc", "🙂👩‍👩‍👧", "x.pdf", "household.json", "/dev/null", "/proc/self/mem", ".", "~/", "15 last", "lastWorkingDay", "19.99", "2%", "60",
        "100 50 20 10 5", "USD", "JPY", "Monday", "March", "7",
    ];

    // Ways that lead somewhere, which keys at random seldom take.
    private static readonly string[][] Ways =
    [
        ["\r", "\e[C", "\e[C", "\e[C", "\e[C", "\e[C", "\e[C", "c", "\r"],
        ["\r", "\e[C", "\e[C", "\e[C", "\e[C", " ", "\e[C", "\e[C", "c", "\r"],
        ["b", "a", "Corner shop", "\r", "12.40", "\r", "\e[C"],
        ["b", "i", PasteBegins + "2026-03-10, 8.20, Corner shop\n2026-03-11, 3.00, Baker\n" + PasteEnds, "\e[C"],
        ["w", "10", "\r", "5", "\r", "c"],
        ["w", "n", "1", "\r", "2", "\r", "\e[C"],
        ["w", "5", "\r", "e", "Lost=1", "\r", "g", "+"],
        ["f", "\r", "k", "\x01"],
        ["r", "c", "\r"],
        ["l", "u", "\r", "wrong", "\r"],
        ["l", "z", "\r"],
        ["h", "\r", "\r"],
        ["h", "\e[B", "\r", "a", "New", "\r", "10", "\r"],
        ["\r", "Household", "\r", "\e[C"],
        ["\r", "\r", "USD", "\r", "\e[C"],
        ["\e[C", "\e[C"],
    ];

    private static readonly string[] Noise =
    [
        "\e[<0;10;5M", "\e[<0;10;5m", "\e[<64;1;1M", "\e[M !!", "\e[I", "\e[O", "\e[?62;22c", "\e[?1;2c", "\e[8;24;80t", "\e[8;0;0t", "\e[1;1R", "\e[24;80R", "\e[?2026;2$y", "\e[?31u", "\e[97;5u",
        "\e[97;1:3u", "\e]10;rgb:ffff/ffff/ffff\a", "\e]11;rgb:0000/0000/0000\e\\", "\e]52;c;YWJj\a", "\eP1$r0m\e\\", "\e_Gi=1;OK\e\\", "\e[200~", "\e[201~", "\e[99999999999999999999~", "\e[1;99999A", "\e[;;;;;~",
        "\e[15~", "\e[21;2~", "\eOP", "\eO", "\e[", "\e]", "\e", "\e\e\e", "\ex", "\e[38;5;1m", "\e[?1049l", "\e[2J", "\ec", "\0", "\x1f", "\x7f", "\u0085", "\u009b31m", "\uFFFF", "\uFFFE", "\uD7FF", "\u200B", "\r\n", "\n",
    ];

    /// <summary>The next thing it does.</summary>
    public Deed Next() => random.Next(1000) switch
    {
        < 330 => Send(Moves),
        < 450 => Keys("\r", 1),
        < 640 => Keys(((char)random.Next('a', 'z' + 1)).ToString(), 1),
        < 690 => Keys(random.Next(3) == 0 ? " " : "0123456789?<>=+-.,/%"[random.Next(20)].ToString(), 1),
        < 740 => Keys(Words[random.Next(Words.Length)] + (random.Next(2) == 0 ? "\r" : ""), 4),
        < 790 => Way(),
        < 820 => Keys("\e", 1),
        < 850 => Keys(((char)random.Next(1, 32)).ToString(), 1),
        < 870 => Keys(random.Next(2) == 0 ? "\x7f" : "\e[3~", 1),
        < 905 => Send(Noise),
        < 925 => Cut(),
        < 935 => new Deed.Send(Bytes(random.Next(1, 12)), 4),
        < 950 => Paste(),
        < 980 => Resize(),
        < 995 => new Deed.Pause(random.Next(1, 80), Reads: true),
        _ => new Deed.Pause(random.Next(50, 400), Reads: false),
    };

    private Deed.Send Send(string[] choices) => Keys(choices[random.Next(choices.Length)], 1);

    private static Deed.Send Keys(string text, int count) => new(Encoding.UTF8.GetBytes(text), count);

    private Deed.Send Way()
    {
        string[] way = Ways[random.Next(Ways.Length)];
        int length = random.Next(3) == 0 ? random.Next(1, way.Length + 1) : way.Length;
        return Keys(string.Concat(way.Take(length)), length);
    }

    private Deed.Send Cut()
    {
        string whole = random.Next(2) == 0 ? Moves[random.Next(Moves.Length)] : Noise[random.Next(Noise.Length)];
        byte[] bytes = Encoding.UTF8.GetBytes(whole);
        return new Deed.Send(bytes[..random.Next(1, bytes.Length + 1)], 1);
    }

    private Deed.Send Paste()
    {
        string text = random.Next(8) switch
        {
            0 => "",
            1 => Words[random.Next(Words.Length)],
            2 => "2026-03-10, 8.20, Corner shop\n2026-03-11;1.250,00;Baker\nnonsense\n\n" + Words[random.Next(Words.Length)],
            3 => $"a{PasteBegins}b{PasteEnds}c{PasteEnds}",
            4 => new string((char)random.Next(1, 200), random.Next(1, 3000)),
            5 => string.Concat(Enumerable.Repeat("2026-03-10, 8.20, Corner shop\n", random.Next(1, 400))),
            6 => Encoding.Latin1.GetString(Bytes(random.Next(1, 500))).Replace(PasteEnds, "", StringComparison.Ordinal),
            _ => new string('7', random.Next(1, 20) == 1 ? 200_000 : 300),
        };
        return Keys((random.Next(12) == 0 ? "" : PasteBegins) + text + (random.Next(6) == 0 ? "" : PasteEnds), 1);
    }

    private Deed.Resize Resize() => random.Next(4) switch
    {
        0 => new Deed.Resize(random.Next(1, 501), random.Next(1, 201)),
        1 => new Deed.Resize(random.Next(1, 70), random.Next(1, 25)),
        2 => new Deed.Resize(60, 20),
        _ => new Deed.Resize(80, 24),
    };

    private byte[] Bytes(int count)
    {
        byte[] bytes = new byte[count];
        random.NextBytes(bytes);
        return bytes;
    }

    /// <summary>A deed as it is told when something went wrong.</summary>
    public static string Told(Deed deed) => deed switch
    {
        Deed.Send { Bytes.Length: > 120 } send => string.Create(CultureInfo.InvariantCulture, $"{send.Bytes.Length} bytes {Told(send.Bytes.AsSpan(0, 60))}..."),
        Deed.Send send => Told(send.Bytes),
        Deed.Resize size => string.Create(CultureInfo.InvariantCulture, $"<{size.Width}x{size.Height}>"),
        Deed.Pause pause => string.Create(CultureInfo.InvariantCulture, $"<{pause.Milliseconds} ms{(pause.Reads ? "" : " unread")}>"),
        _ => "",
    };

    private static string Told(ReadOnlySpan<byte> bytes)
    {
        var told = new StringBuilder();
        foreach (byte one in bytes)
        {
            told.Append(one is > (byte)' ' and < 127 and not (byte)'\\' ? ((char)one).ToString() : string.Create(CultureInfo.InvariantCulture, $"\\x{one:x2}"));
        }

        return told.ToString();
    }
}
