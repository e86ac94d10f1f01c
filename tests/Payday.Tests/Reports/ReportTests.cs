using System.Collections.Immutable;
using NodaTime;
using Payday.Commands;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Routines;
using Payday.Reports;
using Payday.Store.Fields;
using Payday.Text;

namespace Payday.Tests.Reports;

public class ReportTests
{
    [Fact]
    public void Table_TooWide_GivesUpItsSpareColumnsInOrder()
    {
        string wide = new('9', 30);
        ImmutableArray<TextColumn> columns = [Report.Names("Name"), new("rate") { Drops = 2 }, new("why") { Drops = 1 }, Report.Amounts("amount")];

        string[] lines = [.. Report.Table(NumberStyle.CommaPoint, columns, [["Rent", "5 %", wide, wide]], [["Sum", "", "", wide]])];

        Assert.Equal(["Name", "why", "amount"], lines[0].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.All(lines, line => Assert.InRange(line.Length, 0, Report.Width));
    }

    [Fact]
    public void Prose_ThatFits_IsLeftAsItIs()
    {
        string line = "  " + new string('x', 78);

        Assert.Equal([line], Report.Prose(line));
    }

    [Fact]
    public void Prose_TooLong_GoesOnTwoColumnsFurtherIn()
    {
        string[] lines = [.. Report.Prose("  " + string.Join(' ', Enumerable.Repeat("word", 20)))];

        Assert.Equal(2, lines.Length);
        Assert.StartsWith("  word", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("    word", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void RoutineLines_OfLongNamesAndLargeAmounts_FitEightyColumns()
    {
        Household demo = DemoCommand.Household();
        string Long(string name) => string.Concat(Enumerable.Repeat(name + " ", 30))[..60].Trim();
        Household large = demo with
        {
            Sources = [.. demo.Sources.Select(source => source with { Name = Long(source.Name), Expected = source.Expected * 100 })],
            Bills = [.. demo.Bills.Select(bill => bill with { Name = Long(bill.Name), Amount = bill.Amount * 100 })],
            Debts = [.. demo.Debts.Select(debt => debt with { Name = Long(debt.Name), Opening = debt.Opening * 100 })],
            Pots = [.. demo.Pots.Select(pot => pot with { Name = Long(pot.Name) })],
        };
        Book book = Book.Begin(large);

        string[] lines = [.. RoutineReport.Lines(Routine.Plan(book, new RoutineDraft(new LocalDate(2026, 3, 6))).Value!), .. LedgerReport.Lines(book.Household, [.. book.Ledger.Movements])];

        Assert.All(lines, line => Assert.InRange(TextColumns.Width(line), 0, Report.Width));
    }

    [Fact]
    public void LedgerLines_OfLongNames_CutNothing()
    {
        Household demo = DemoCommand.Household();
        string name = "The flat above the bakery, half of what the landlord asks for";
        Household household = demo with { Bills = [.. demo.Bills.Select(bill => bill with { Name = name })] };

        string text = string.Join(' ', LedgerReport.Lines(household, [.. Book.Begin(household).Ledger.Movements]).Select(line => line.Trim()));

        Assert.Contains("-> account: set aside for The flat above the bakery, half of what the landlord asks for", text, StringComparison.Ordinal);
    }
}
