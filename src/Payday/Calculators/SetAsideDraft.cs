using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Formats;

namespace Payday.Calculators;

/// <summary>The input of the <c>setaside</c> calculator as it was written.</summary>
internal sealed record SetAsideDraft
{
    private const int MostRows = 100_000;

    public Currency? Currency { get; init; }

    public decimal? Held { get; init; }

    public ImmutableArray<Row>? Paydays { get; init; }

    public ImmutableArray<Row>? Dues { get; init; }

    public static PartFormat<SetAsideDraft> Fields { get; } = new(
        FileField.Of(Members.Currency, "currency", FileValues.Currency),
        FileField.Of(Members.Held, "held", FileValues.Amount),
        FileField.Of(Members.Paydays, "paydays", new ItemsValue<Row>(
            new(
                FileField.Of(Row.Members.Date, "date", FileValues.Date),
                FileField.Of(Row.Members.Amount, "income", FileValues.Amount)),
            MostRows)),
        FileField.Of(Members.Dues, "dues", new ItemsValue<Row>(
            new(
                FileField.Of(Row.Members.Bill, "bill", FileValues.Line),
                FileField.Of(Row.Members.Date, "date", FileValues.Date),
                FileField.Of(Row.Members.Amount, "amount", FileValues.Amount)),
            MostRows)));

    public static class Members
    {
        public static DraftMember<SetAsideDraft, Currency?> Currency { get; } = new(file => file.Currency, (file, value) => file with { Currency = value });

        public static DraftMember<SetAsideDraft, decimal?> Held { get; } = new(file => file.Held, (file, value) => file with { Held = value });

        public static DraftMember<SetAsideDraft, ImmutableArray<Row>?> Paydays { get; } = new(file => file.Paydays, (file, value) => file with { Paydays = value });

        public static DraftMember<SetAsideDraft, ImmutableArray<Row>?> Dues { get; } = new(file => file.Dues, (file, value) => file with { Dues = value });
    }

    /// <summary>A payday with its income, or a due with its bill.</summary>
    internal sealed record Row
    {
        public string? Bill { get; init; }

        public LocalDate? Date { get; init; }

        public decimal? Amount { get; init; }

        public static class Members
        {
            public static DraftMember<Row, string?> Bill { get; } = new(row => row.Bill, (row, value) => row with { Bill = value });

            public static DraftMember<Row, LocalDate?> Date { get; } = new(row => row.Date, (row, value) => row with { Date = value });

            public static DraftMember<Row, decimal?> Amount { get; } = new(row => row.Amount, (row, value) => row with { Amount = value });
        }
    }
}
