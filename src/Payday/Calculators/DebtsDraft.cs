using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;

namespace Payday.Calculators;

/// <summary>The input of the <c>debts</c> calculator as it was written.</summary>
internal sealed record DebtsDraft
{
    public Currency? Currency { get; init; }

    public LocalDate? From { get; init; }

    public ImmutableArray<DebtDraft>? Debts { get; init; }

    public static PartFormat<DebtsDraft> Fields { get; } = new(
        FileField.Of(Members.Currency, "currency", FileValues.Currency),
        FileField.Of(Members.From, "from", FileValues.Date),
        FileField.Of(Members.Debts, "debts", new ItemsValue<DebtDraft>(new(
            FileField.OfItem<DebtDraft>(ItemMembers.Name, "name"),
            FileField.Of(DebtDraft.Members.Balance, "balance", FileValues.Amount),
            FileField.Of(DebtDraft.Members.Rate, "rate", FileValues.Rate),
            FileField.Of(DebtDraft.Members.Minimum, "minimum", MinimumFormat.Value)))));

    public static class Members
    {
        public static DraftMember<DebtsDraft, Currency?> Currency { get; } = new(file => file.Currency, (file, value) => file with { Currency = value });

        public static DraftMember<DebtsDraft, LocalDate?> From { get; } = new(file => file.From, (file, value) => file with { From = value });

        public static DraftMember<DebtsDraft, ImmutableArray<DebtDraft>?> Debts { get; } = new(file => file.Debts, (file, value) => file with { Debts = value });
    }
}
