using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Files;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Chooses among the readings: what the balances prove, else what was answered, else what nothing speaks against; else it asks.</summary>
internal sealed class CsvChooser(CsvGrid grid, int date, Currency currency, CsvProfile known, IReadOnlyList<LocalDate?>? dates)
{
    // Households spend more often than they are paid: an account that says the opposite is likely a card's, with purchases above zero.
    private const int MostAboveZero = 70;

    /// <summary>Chooses.</summary>
    public CsvVerdict Choose()
    {
        List<CsvReading> readings = CsvReadings.Of(grid, date).FindAll(IsAnswered);
        if (readings.Count == 0)
        {
            return CsvVerdict.None;
        }

        return Proven(readings) ?? Labelled(readings) ?? ByNames(readings);
    }

    private bool IsAnswered(CsvReading reading) =>
        (known.DecimalMark is not { } mark || reading.Mark == mark)
        && (known.AboveZeroGoesOut is not { } turned || reading.IsTurned == turned || reading.Columns.Out is not null)
        && (known.OutWord is not { } word || reading.Columns.Direction is null || reading.OutWord == word)
        && (known.Columns is not { } columns || reading.Columns with { Balance = columns.Balance } == columns);

    private CsvVerdict? Proven(List<CsvReading> readings)
    {
        var proofs = new List<(CsvReading Reading, CsvProof Proof, long?[] Amounts)>();
        foreach (CsvReading reading in readings)
        {
            long?[] amounts = reading.Amounts(grid);
            foreach (CsvNumbers balance in grid.Numbers.Where(numbers => CanBeBalance(numbers, reading)))
            {
                CsvProof proof = CsvProof.Of(grid, amounts, balance, dates);
                bool isNamed = grid.RoleOf(balance.Column) == CsvRole.Balance;
                if (proof.IsProof || (isNamed && proof.IsWhole && proof.Steps > 0))
                {
                    proofs.Add((reading with { Columns = reading.Columns with { Balance = balance.Column } }, proof, amounts));
                }
            }
        }

        if (proofs.Count == 0)
        {
            return null;
        }

        int most = proofs.Max(proof => proof.Proof.Holds);
        proofs.RemoveAll(proof => proof.Proof.Holds < most);
        if (proofs.Exists(proof => IsNamed(proof.Reading)))
        {
            proofs.RemoveAll(proof => !IsNamed(proof.Reading));
        }

        (CsvReading best, CsvProof held, long?[] its) = proofs[0];

        // No balance stands before the first line: with few lines two columns of words can both agree with those after it.
        if (proofs.Exists(proof => proof.Reading.Mark == best.Mark && !proof.Amounts.SequenceEqual(its)))
        {
            return AskDirection(proofs.ConvertAll(proof => proof.Reading));
        }

        // With amounts such as 1.230 all through the file the balances agree either way.
        return proofs.Find(proof => proof.Reading.Mark != best.Mark && !proof.Amounts.SequenceEqual(its)) is { Reading: not null } other
            ? AskMark(best, other.Reading)
            : new CsvVerdict(best, held, null);
    }

    // Any column with two words in it may be the one that says which way; a name that hints at it goes before.
    private bool IsNamed(CsvReading reading) =>
        reading.Columns.Direction is { } column && (reading.OutWord is null || known.OutWord is not null || grid.RoleOf(column) is CsvRole.Direction or CsvRole.Kind);

    private bool CanBeBalance(CsvNumbers numbers, CsvReading reading) =>
        numbers.Mark == reading.Mark && numbers.IsFull
        && numbers.Column != reading.Columns.Amount && numbers.Column != reading.Columns.Out
        && (known.Columns?.Balance is not { } column || numbers.Column == column);

    // An opening and a closing balance around the table.
    private CsvVerdict? Labelled(List<CsvReading> readings)
    {
        var closing = readings.FindAll(reading =>
            CsvLabels.OpeningOf(grid.Table, reading.Mark, currency.Decimals) is { } first
            && CsvLabels.ClosingOf(grid.Table, reading.Mark, currency.Decimals) is { } last
            && reading.Amounts(grid).Aggregate((Int128)first.MinorUnits, (sum, amount) => sum + (amount ?? 0)) == last.MinorUnits);
        return closing.Count == 0 || closing[0].Amounts(grid).All(amount => amount is null or 0)
            ? null
            : new CsvVerdict(closing[0], null, null);
    }

    private CsvVerdict ByNames(List<CsvReading> readings)
    {
        List<CsvReading> parted = readings.FindAll(reading => reading.Columns.Out is not null);
        if (parted.Count > 0)
        {
            List<CsvReading> named = parted.FindAll(reading =>
                known.Columns is not null || grid.RoleOf(reading.Columns.Out!.Value) == CsvRole.Out || grid.RoleOf(reading.Columns.Amount) == CsvRole.In);
            return named.Count > 0 ? Marked(named) : AskDirection(parted);
        }

        List<CsvReading> directed = readings.FindAll(reading => reading.Columns.Direction is not null);
        List<CsvReading> spoken = directed.FindAll(reading => reading.OutWord is null || known.OutWord is not null);
        if (spoken.Count > 0)
        {
            return Marked(spoken);
        }

        List<CsvReading> hinted = directed.FindAll(reading => grid.RoleOf(reading.Columns.Direction!.Value) is CsvRole.Direction or CsvRole.Kind);
        return hinted.Count > 0
            ? AskDirection(hinted)
            : BySign(readings.FindAll(reading => reading.Columns is { Out: null, Direction: null }), directed);
    }

    private CsvVerdict BySign(List<CsvReading> readings, List<CsvReading> directed)
    {
        List<CsvReading> named = readings.FindAll(reading => grid.RoleOf(reading.Columns.Amount) == CsvRole.Amount);
        List<CsvReading> candidates = named.Count > 0 ? named : readings.FindAll(reading => grid.RoleOf(reading.Columns.Amount) != CsvRole.Balance);
        candidates = candidates.Count > 0 ? candidates : readings;
        if (candidates.Count == 0)
        {
            return CsvVerdict.None;
        }

        if (candidates.Select(reading => reading.Columns.Amount).Distinct().Count() > 1)
        {
            return AskColumn(candidates);
        }

        CsvVerdict marked = Marked(candidates);
        if (marked.Reading is not { } reading || known.AboveZeroGoesOut is not null)
        {
            return marked;
        }

        CsvNumbers amounts = grid.Find(reading.Columns.Amount, reading.Mark)!;
        int above = amounts.Cells.Count(cell => cell.MinorUnits > 0);
        bool mayBeTurned = above * 100 >= amounts.Count * MostAboveZero;
        List<CsvReading> byWord = directed.FindAll(one => one.Columns.Amount == reading.Columns.Amount && one.Mark == reading.Mark);
        return mayBeTurned
            ? AskDirection([reading with { IsTurned = true }, reading with { IsTurned = false }, .. byWord])
            : new CsvVerdict(reading with { IsTurned = false }, null, null);
    }

    // The mark is plain where a cell shows the currency's decimals behind it, or none shows any mark.
    private CsvVerdict Marked(List<CsvReading> readings)
    {
        CsvReading first = readings[0];
        if (known.DecimalMark is not null)
        {
            return new CsvVerdict(first, null, null);
        }

        CsvReading? other = readings.Find(reading => reading.Mark != first.Mark && reading.Columns == first.Columns && reading.IsTurned == first.IsTurned);
        bool differ = other is not null && !other.Amounts(grid).SequenceEqual(first.Amounts(grid));
        return differ ? AskMark(first, other!)
            : IsMarkPlain(first) ? new CsvVerdict(first, null, null)
            : AskMark(first, null);
    }

    private bool IsMarkPlain(CsvReading reading)
    {
        bool anyMark = false;
        foreach (CsvRow row in grid.Rows)
        {
            foreach (int column in new[] { reading.Columns.Amount, reading.Columns.Out ?? reading.Columns.Amount })
            {
                ReadOnlySpan<char> digits = row[column].AsSpan().TrimEnd("-+) \u00A0CDR").TrimEnd();
                int at = digits.LastIndexOfAny('.', ',');
                anyMark |= at >= 0;
                if (at >= 0 && digits[at] == reading.Mark && CountDigits(digits[(at + 1)..]) is 1 or 2)
                {
                    return true;
                }
            }
        }

        return !anyMark;
    }

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        int end = text.IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? text.Length : end;
    }

    private CsvVerdict AskMark(CsvReading one, CsvReading? other)
    {
        int shown = Enumerable.Range(0, grid.Rows.Count).FirstOrDefault(row => grid.Rows[row][one.Columns.Amount].AsSpan().ContainsAny('.', ','));
        CsvReading[] readings = other is null ? [one] : [one, other];
        return Ask(CsvQuestionKind.DecimalMark, shown, readings, reading => Shown(grid.Find(reading.Columns.Amount, reading.Mark)![shown]),
            reading => known with { DecimalMark = reading.Mark });
    }

    private CsvVerdict AskDirection(List<CsvReading> readings)
    {
        var choices = new List<(CsvReading Reading, long?[] Amounts)>();
        foreach (CsvReading reading in readings)
        {
            long?[] amounts = reading.Amounts(grid);
            if (!choices.Exists(choice => choice.Amounts.SequenceEqual(amounts)))
            {
                choices.Add((reading, amounts));
            }
        }

        int[] shown = ToldApart([.. choices.Select(choice => choice.Amounts)]);
        return new CsvVerdict(null, null, new CsvQuestion(
            CsvQuestionKind.Direction,
            grid.Rows[shown[0]].Line,
            string.Join(" / ", shown.Select(row => CleanText.Join(grid.Rows[row].Cells))),
            [.. choices.Select(choice => new CsvChoice(
                string.Join(", ", shown.Select(row => Shown(choice.Amounts[row] ?? 0))),
                known with { Columns = choice.Reading.Columns, AboveZeroGoesOut = choice.Reading.IsTurned, OutWord = choice.Reading.OutWord }))]));
    }

    // The first rows by which all readings differ from one another.
    private static int[] ToldApart(long?[][] readings)
    {
        var rows = new List<int>();
        for (int i = 0; i < readings.Length; i++)
        {
            for (int k = i + 1; k < readings.Length; k++)
            {
                if (rows.TrueForAll(row => readings[i][row] == readings[k][row]))
                {
                    rows.Add(Enumerable.Range(0, readings[i].Length).First(row => readings[i][row] != readings[k][row]));
                }
            }
        }

        return rows.Count == 0 ? [0] : [.. rows];
    }

    private CsvVerdict AskColumn(List<CsvReading> readings) =>
        Ask(CsvQuestionKind.AmountColumn, 0, [.. readings.DistinctBy(reading => reading.Columns.Amount)],
            reading => CleanText.Of(grid.Table.Header is { } header ? header[reading.Columns.Amount] : grid.Rows[0][reading.Columns.Amount]),
            reading => known with { Columns = reading.Columns });

    private CsvVerdict Ask(
        CsvQuestionKind kind, int row, CsvReading[] readings, Func<CsvReading, string> reads, Func<CsvReading, CsvProfile> answer)
    {
        ImmutableArray<CsvChoice> choices = [.. readings.Select(reading => new CsvChoice(reads(reading), answer(reading)))];
        string written = CleanText.Join(grid.Rows[row].Cells);
        return new CsvVerdict(null, null, new CsvQuestion(kind, grid.Rows[row].Line, written, choices));
    }

    private string Shown(long minorUnits) => Money.FromMinorUnits(minorUnits, currency).ToPlain();
}
