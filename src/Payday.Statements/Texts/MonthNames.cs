namespace Payday.Statements.Texts;

/// <summary>Month names by their first letters, in the languages of the formats' own countries.</summary>
internal static class MonthNames
{
    // English, German, French, Spanish, Italian, Portuguese, Dutch, Danish, Norwegian, Swedish, Finnish, Polish; folded, the shortest
    // beginnings that no other month has. Common practice, from memory.
    private static readonly string[][] Beginnings =
    [
        ["JAN", "ENE", "GEN", "TAM", "STY"],
        ["FEB", "FEV", "HEL", "LUT"],
        ["MAR", "MRZ", "MAE", "MRT", "MAA"],
        ["APR", "AVR", "ABR", "HUH", "KWI"],
        ["MAY", "MAI", "MAG", "MEI", "MAJ", "TOU"],
        ["JUN", "JUIN", "GIU", "KES", "CZE"],
        ["JUL", "JUIL", "LUG", "HEI", "LIP"],
        ["AUG", "AOU", "AGO", "ELO", "SIE"],
        ["SEP", "SET", "SYY", "WRZ"],
        ["OCT", "OKT", "OUT", "OTT", "LOK", "PAZ"],
        ["NOV", "MARR", "LIS"],
        ["DEC", "DEZ", "DIC", "DES", "JOU", "GRU"],
    ];

    /// <summary>The month that a word begins like, 1 to 12; 0 for none. The longest beginning that fits decides.</summary>
    public static int Find(ReadOnlySpan<char> word)
    {
        int month = 0;
        int longest = 0;
        for (int i = 0; i < Beginnings.Length; i++)
        {
            foreach (string beginning in Beginnings[i])
            {
                if (beginning.Length > longest && StartsFolded(word, beginning))
                {
                    month = i + 1;
                    longest = beginning.Length;
                }
            }
        }

        return month;
    }

    private static bool StartsFolded(ReadOnlySpan<char> word, string beginning)
    {
        if (word.Length < beginning.Length)
        {
            return false;
        }

        for (int i = 0; i < beginning.Length; i++)
        {
            if (Folding.Fold(word[i]) != beginning[i])
            {
                return false;
            }
        }

        return true;
    }
}
