using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Households;

namespace Payday.Core.Drafts;

/// <summary>What was there at the start, as it was entered, but for what bills and pots have of it.</summary>
public sealed record OpeningDraft
{
    /// <summary>All that is in the account, in whole units; below zero where it is overdrawn.</summary>
    public decimal? Account { get; init; }

    /// <summary>Loose notes at home; they may be missing.</summary>
    public ImmutableArray<NoteCountDraft>? LooseNotes { get; init; }

    /// <summary>The draft that <see cref="HouseholdCheck"/> makes opening balances of.</summary>
    /// <param name="opening">The balances.</param>
    /// <param name="currency">Their currency.</param>
    public static OpeningDraft Of(OpeningBalances opening, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(opening);
        return new()
        {
            Account = opening.Account.ToDecimal(),
            LooseNotes = [.. opening.LooseNotes.Reverse().Select(pair => new NoteCountDraft(Money.FromMinorUnits(pair.Key, currency).ToDecimal(), pair.Value))],
        };
    }

    /// <summary>The way to how many notes there are of a value; null for none counted.</summary>
    public static DraftPath<OpeningDraft, int?> CountOf(decimal note) => new(
        DraftPlace.Of(Members.LooseNotes),
        opening => (opening.LooseNotes ?? []).Where(entry => entry.Note == note).Select(entry => (int?)entry.Count).FirstOrDefault(),
        (opening, count) => opening with { LooseNotes = With(opening.LooseNotes ?? [], note, count) },
        _ => true);

    private static ImmutableArray<NoteCountDraft>? With(ImmutableArray<NoteCountDraft> counts, decimal note, int? count)
    {
        IEnumerable<NoteCountDraft> others = counts.Where(entry => entry.Note != note);
        ImmutableArray<NoteCountDraft> changed =
            [.. (count is { } there ? others.Append(new NoteCountDraft(note, there)) : others).OrderByDescending(entry => entry.Note)];
        return changed.IsEmpty ? null : changed;
    }

    /// <summary>The members.</summary>
    public static class Members
    {
        /// <inheritdoc cref="OpeningDraft.Account"/>
        public static DraftMember<OpeningDraft, decimal?> Account { get; } = new(opening => opening.Account, (opening, value) => opening with { Account = value });

        /// <inheritdoc cref="OpeningDraft.LooseNotes"/>
        public static DraftMember<OpeningDraft, ImmutableArray<NoteCountDraft>?> LooseNotes { get; } =
            new(opening => opening.LooseNotes, (opening, value) => opening with { LooseNotes = value });
    }
}
