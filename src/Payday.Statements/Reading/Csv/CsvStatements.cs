using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Makes statements of a grid, one for each account, by the reading chosen.</summary>
internal sealed class CsvStatements(
    CsvGrid grid, CsvBody body, Currency currency, CsvVerdict verdict, IReadOnlyList<LocalDate?> dates, FaultList faults)
{
    private readonly CsvReading reading = verdict.Reading!;
    private readonly long?[] amounts = verdict.Reading!.Amounts(grid);
    private readonly CsvTexts texts = new(grid.Table, verdict.Reading!.Columns);
    private readonly int? currencyColumn = CsvCurrency.ColumnOf(grid.Table, grid.Rows);

    /// <summary>The statements, in the order of their first rows.</summary>
    public ImmutableArray<Statement> All()
    {
        List<int[]> groups = verdict.Proof?.Order ?? grid.Groups;
        return [.. groups.Select((group, i) => One(group, hasPending: i == 0))];
    }

    private Statement One(int[] group, bool hasPending)
    {
        var lines = ImmutableArray.CreateBuilder<StatementLine>(group.Length);
        int leftOut = body.Broken;
        foreach (int row in group)
        {
            if (Line(grid.Rows[row], dates[row], amounts[row]) is { } line)
            {
                lines.Add(line with { BalanceAfter = BalanceAfter(row) });
            }
            else
            {
                leftOut++;
            }
        }

        ImmutableArray<StatementLine> read = lines.ToImmutable();
        var statement = new Statement(StatementFormat.Csv, currency)
        {
            Account = AccountOf(group),
            Lines = read,
            Pending = hasPending ? [.. body.Pending.Select(Pending).OfType<StatementLine>()] : [],
            LinesLeftOut = leftOut,
            Opening = OpeningOf(read),
            Closing = ClosingOf(read),
        };
        return StatementBuilder.Complete(statement, areInOrder: verdict.Proof is not null);
    }

    private StatementLine? Line(CsvRow row, LocalDate? date, long? amount)
    {
        if (currencyColumn is { } column && row[column].Length > 0 && row[column] != currency.Code)
        {
            faults.Add(FaultKind.OtherCurrency, row.Line, row[column], currency.Code);
            return null;
        }

        if (date is not { } day)
        {
            faults.Add(FaultKind.DateMissing, row.Line, row[body.DateColumn]);
            return null;
        }

        if (amount is not { } minorUnits)
        {
            string written = row[reading.Columns.Amount];
            AmountState state = AmountText.Read(written, reading.Mark, currency.Decimals).State;
            faults.Add(state == AmountState.Read ? FaultKind.DirectionMissing : AmountFaults.KindOf(state), row.Line, written, currency.Code);
            return null;
        }

        return texts.Fill(row, new StatementLine(day, Money.FromMinorUnits(minorUnits, currency))
        {
            Place = row.Line,
            ValueDate = body.ValueDateColumn is { } value ? CsvDate.Read(row[value], body.Orders[0]) : null,
        });
    }

    // A pending line without a date of its own stands on its value date, else on the last day.
    private StatementLine? Pending(CsvRow row)
    {
        LocalDate? date = CsvDate.Read(row[body.DateColumn], body.Orders[0])
            ?? (body.ValueDateColumn is { } value ? CsvDate.Read(row[value], body.Orders[0]) : null)
            ?? dates.OfType<LocalDate>().DefaultIfEmpty().Max();
        var alone = CsvGrid.Of(grid.Table, body with { Booked = [row] }, currency.Decimals);
        bool canBe = alone.Find(reading.Columns.Amount, reading.Mark) is not null
            && (reading.Columns.Out is not { } column || alone.Find(column, reading.Mark) is not null);
        return canBe && date is { } day && reading.Amounts(alone)[0] is { } amount
            ? texts.Fill(row, new StatementLine(day, Money.FromMinorUnits(amount, currency)) { Place = row.Line })
            : null;
    }

    private Money? BalanceAfter(int row) =>
        verdict.Proof is not null && grid.Find(reading.Columns.Balance!.Value, reading.Mark) is { } numbers && numbers.Cells[row].Ok
            ? Money.FromMinorUnits(numbers[row], currency)
            : null;

    private string AccountOf(int[] group)
    {
        int column = Array.IndexOf(grid.Table.Roles, CsvRole.OwnAccount);
        return column >= 0
            ? CleanText.Of(grid.Rows[group[0]][column]).Replace(" ", "", StringComparison.Ordinal)
            : CsvLabels.AccountOf(grid.Table);
    }

    private Balance? OpeningOf(ImmutableArray<StatementLine> lines)
    {
        if (lines is [{ BalanceAfter: { } after } first, ..])
        {
            Int128 before = (Int128)after.MinorUnits - first.Amount.MinorUnits;
            return before > long.MaxValue || before < long.MinValue ? null : new Balance(Money.FromMinorUnits((long)before, currency), first.Date, first.Place);
        }

        return Labelled(CsvLabels.OpeningOf(grid.Table, reading.Mark, currency.Decimals));
    }

    private Balance? ClosingOf(ImmutableArray<StatementLine> lines) => lines is [.., { BalanceAfter: { } after } last]
        ? new Balance(after, last.Date, last.Place)
        : Labelled(CsvLabels.ClosingOf(grid.Table, reading.Mark, currency.Decimals));

    // What stands around the table is of one account.
    private Balance? Labelled(CsvLabel? label) =>
        label is { } found && grid.Groups.Count == 1 ? new Balance(Money.FromMinorUnits(found.MinorUnits, currency), null, found.Line) : null;
}
