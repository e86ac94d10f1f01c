using System.Collections.Immutable;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Texts;

namespace Payday.Statements.Reading.Csv;

/// <summary>Reads CSV of any bank: finds out how it is written, and asks what it can't find.</summary>
internal static class CsvStatementReader
{
    /// <summary>Reads a file.</summary>
    public static StatementFile Read(string text, ReadingOptions options)
    {
        if (CsvSeparator.Find(text, out bool tooLarge) is not { } table)
        {
            return tooLarge
                ? StatementFile.Refused(FaultKind.TooManyLines, wanted: $"{ReadingLimits.MostLines}")
                : StatementFile.Refused(FaultKind.NotAStatement);
        }

        CsvProfile known = options.Profiles.IsDefaultOrEmpty ? new CsvProfile(table.Fingerprint)
            : options.Profiles.FirstOrDefault(profile => profile.Header == table.Fingerprint) ?? new CsvProfile(table.Fingerprint);
        StatementFile read = Read(table, known, options);

        // Columns that were right once and aren't any more, as in a file with another header of the same words, are found anew.
        bool isStale = known.Columns is not null && read.Faults.Any(fault => fault.Kind == FaultKind.NoColumns);
        return isStale ? Read(table, new CsvProfile(table.Fingerprint), options) : read;
    }

    private static StatementFile Read(CsvTable table, CsvProfile known, ReadingOptions options)
    {
        var faults = new FaultList();
        CsvBody? body = CsvBody.Of(table, known, options.Today, faults);
        if (body is null || body.Booked.Count == 0 || body.Orders.IsEmpty)
        {
            return StatementFile.Refused(FaultKind.NoColumns);
        }

        if (CsvCurrency.Of(table, body.Booked, known, options.Currency) is not { } currency)
        {
            return Asks(body.Booked[0], CsvQuestionKind.Currency, Currency.KnownCodes.Select(code => new CsvChoice(code, known with { CurrencyCode = code })));
        }

        if (body.Orders.Length > 1)
        {
            return AsksDates(body, known);
        }

        LocalDate?[] dates = [.. body.Booked.Select(row => CsvDate.Read(row[body.DateColumn], body.Orders[0]))];
        CsvGrid grid = CsvGrid.Of(table, body, currency.Decimals);
        CsvVerdict verdict = new CsvChooser(grid, body.DateColumn, currency, known, dates).Choose();
        if (verdict.Question is { } question)
        {
            return new StatementFile([], []) { Questions = [question] };
        }

        if (verdict.Reading is not { } reading)
        {
            return StatementFile.Refused(FaultKind.NoColumns);
        }

        var writer = new CsvStatements(grid, body, currency, verdict, dates, faults);
        return new StatementFile(writer.All(), faults.ToImmutable())
        {
            Profile = known with
            {
                DateOrder = body.Orders[0],
                DecimalMark = reading.Mark,
                AboveZeroGoesOut = reading.IsTurned,
                OutWord = reading.OutWord,
                Columns = reading.Columns,
                CurrencyCode = currency.Code,
            },
        };
    }

    // Shown is a date that the orders read as different days.
    private static StatementFile AsksDates(CsvBody body, CsvProfile known)
    {
        CsvRow shown = body.Booked.First(row => body.Orders.Select(order => CsvDate.Read(row[body.DateColumn], order)).Distinct().Count() > 1);
        return Asks(shown, CsvQuestionKind.DateOrder, body.Orders.Select(order => new CsvChoice(
            CsvDate.Read(shown[body.DateColumn], order) is { } date ? LocalDatePattern.Iso.Format(date) : "", known with { DateOrder = order })));
    }

    private static StatementFile Asks(CsvRow row, CsvQuestionKind kind, IEnumerable<CsvChoice> choices) =>
        new([], []) { Questions = [new CsvQuestion(kind, row.Line, CleanText.Join(row.Cells), [.. choices])] };
}
