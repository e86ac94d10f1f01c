using System.Collections.Immutable;
using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Slips;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Tests.Slips;

public class FillingSheetTests
{
    private static readonly Currency Usd = Currency.FromCode("USD");
    private static readonly long[] Values = [100, 50, 20, 10, 5, 2, 1];

    private static readonly Gen<ImmutableArray<NoteLine>> GenNotes =
        Gen.Select(Gen.OneOf(Values), Gen.Long[0, 3_000]).Array[0, 5]
            .Select(pairs => pairs.Select(pair => new NoteLine(Money.FromUnits(pair.Item1, Usd), pair.Item2)).ToImmutableArray());

    private static readonly Gen<FillingRow> GenRow =
        Gen.Select(Gen.OneOf("Groceries", "買い物", "A very long name for such a small pot of money", ""), Gen.Bool, GenNotes)
            .Select((pot, weekly, notes) => new FillingRow(pot, weekly ? Samples.Friday : null, notes));

    // Some of the notes come from home; a few that were at home go back to the bank.
    private static readonly Gen<FillingSheetData> GenSheet =
        Gen.Select(GenRow.Array[0, 12], GenNotes, Gen.Bool).Select((rows, toBank, reuse) =>
        {
            ImmutableArray<NoteLine> inPots = [.. rows.SelectMany(row => row.Notes)];
            ImmutableArray<NoteLine> half = reuse ? [.. inPots.Select(line => new NoteLine(line.Value, line.Count / 2))] : [];
            ImmutableArray<NoteLine> rest = reuse ? [.. inPots.Select(line => new NoteLine(line.Value, line.Count - (line.Count / 2)))] : inPots;
            return new FillingSheetData(
                Samples.Friday, Usd, NumberStyle.CommaPoint, ["M. Example"], [.. rows], rest, [.. half, .. toBank], toBank,
                [new KeptBackLine("Groceries", Money.FromMinorUnits(toBank.Length, Usd))]);
        });

    [Fact]
    public void Differences_SheetThatTallies_AreNone() =>
        GenSheet.Sample(sheet => FillingSheetCheck.Differences(sheet).IsEmpty, iter: 300);

    [Fact]
    public void Differences_ANoteTooFew_NamesItsValue()
    {
        FillingSheetData right = Samples.Sheet("usd");
        FillingSheetData wrong = right with { FromHome = Samples.Notes(Usd, (20, 2)) };
        Assert.Equal([new NoteDifference(Money.FromUnits(20, Usd), 7, 6)], FillingSheetCheck.Differences(wrong));
    }

    [Fact]
    public void Lay_SheetThatDoesNotTally_Throws() =>
        Assert.Throws<ArgumentException>(() => FillingSheetLayout.Lay(Samples.Sheet("usd") with { Withdrawn = [] }, 80));

    [Theory]
    [InlineData(31)]
    [InlineData(81)]
    public void Lay_WidthOfNoPaper_Throws(int width)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => FillingSheetLayout.Lay(Samples.Sheet("usd"), width));
        Assert.Throws<ArgumentOutOfRangeException>(() => SlipLayout.Lay(Samples.Slip("usd"), width));
    }

    [Fact]
    public void Lay_AnySheetAtAnyWidth_FitsAndShowsTheTotal() =>
        Gen.Select(GenSheet, Gen.Int[32, 80]).Sample(
            (sheet, width) =>
            {
                Paper paper = FillingSheetLayout.Lay(sheet, width);
                Money total = Money.Sum(sheet.Rows.SelectMany(row => row.Notes).Select(line => line.Amount), Usd);
                return paper.Lines.All(line => TextColumns.Width(line) <= width && line == line.TrimEnd())
                    && (total.IsZero || paper.Lines.Any(line => line.Contains(total.ToString(sheet.Style), StringComparison.Ordinal)));
            },
            iter: 300);

    [Fact]
    public void Lay_AnySlipAtAnyWidth_FitsAndShowsTheTotal() =>
        Gen.Select(GenNotes, Gen.Int[32, 80], Gen.Long[1, 20_000_000_000]).Sample(
            (notes, width, many) =>
            {
                ImmutableArray<NoteLine> lines = [.. notes, new NoteLine(Money.FromUnits(100, Usd), many)];
                Paper paper = SlipLayout.Lay(new SlipData(new LocalDate(2026, 9, 30), Usd, NumberStyle.PointComma, [], lines), width);
                string total = Money.Sum(lines.Select(line => line.Amount), Usd).ToString(NumberStyle.PointComma);
                return paper.Lines.All(line => TextColumns.Width(line) <= width)
                    && paper.Lines.Any(line => line.EndsWith(total, StringComparison.Ordinal));
            },
            iter: 300);

    [Fact]
    public void Lay_NamesWithControls_AreCleaned()
    {
        FillingSheetData sheet = Samples.Sheet("jpy");
        sheet = sheet with { HeadLines = ["x\u001b]0;title\u0007"], Rows = [.. sheet.Rows.Select(row => row with { Pot = "a\u001b[2J\nb" })] };
        Assert.All([32, 80], width =>
            Assert.DoesNotContain(FillingSheetLayout.Lay(sheet, width).Lines, line => line.Any(char.IsControl)));
    }
}
