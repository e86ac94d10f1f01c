using System.Collections.Frozen;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Texts;

namespace Payday.Printing;

/// <summary>A size of paper that a PDF page can have.</summary>
internal sealed record PaperSize
{
    private PaperSize(string name, int width, int height, int columns)
    {
        Name = name;
        Width = width;
        Height = height;
        Columns = columns;
    }

    /// <summary>Pocket size, 105 x 148 mm (ISO 216).</summary>
    public static PaperSize A6 { get; } = new("A6", 298, 420, 42);

    /// <summary>210 x 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("A4", 595, 842, 80);

    /// <summary>8.5 x 11 inches.</summary>
    public static PaperSize Letter { get; } = new("Letter", 612, 792, 80);

    // Unicode's Common Locale Data Repository, paperSize: US-Letter for BZ CA CL CO CR GT MX NI PA PH PR SV US VE; from memory.
    private static readonly FrozenSet<string> LetterCurrencies =
        FrozenSet.Create(StringComparer.Ordinal, "BZD", "CAD", "CLP", "COP", "CRC", "GTQ", "MXN", "NIO", "PAB", "PHP", "USD", "SVC", "VES");

    /// <summary>The sizes, smallest first.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = [A6, A4, Letter];

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>The width in whole points, 72 to the inch.</summary>
    public int Width { get; }

    /// <summary>The height in whole points.</summary>
    public int Height { get; }

    /// <summary>What is left blank on all sides, in points.</summary>
    /// <remarks>A fifteenth of the width is 7 mm on A6 and 14 mm on Letter: more than printers leave blank.</remarks>
    public double Margin => Width / 15.0;

    /// <summary>The columns of text that read well on it.</summary>
    public int Columns { get; }

    /// <summary>The size of a full sheet where a currency is used.</summary>
    public static PaperSize SheetFor(Currency currency) => LetterCurrencies.Contains(currency.Code) ? Letter : A4;

    /// <summary>Whether it has the room of a full sheet, so that large print and a report fit it.</summary>
    public bool IsSheet => this != A6;

    /// <summary>The size with a name, in capitals or not.</summary>
    public static Result<PaperSize> Parse(string? name) =>
        All.FirstOrDefault(size => size.Name.Equals(name?.Trim(), StringComparison.OrdinalIgnoreCase)) is { } found
            ? Result.Of(found)
            : Result.Refused<PaperSize>(new PrinterFault.NoSuchSize([.. All.Select(size => size.Name)]));
}
