using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Drafts;
using Payday.Store.Formats;
using Payday.Store.HouseholdFiles;

namespace Payday.Calculators;

/// <summary>The input of the <c>notes</c> calculator as it was written.</summary>
internal sealed record NotesDraft
{
    public Currency? Currency { get; init; }

    public ImmutableArray<decimal>? Notes { get; init; }

    public ImmutableArray<NoteCountDraft>? OnHand { get; init; }

    public BankDraft? Source { get; init; }

    public ImmutableArray<PotDraft>? Pots { get; init; }

    public static PartFormat<NotesDraft> Fields { get; } = new(
        FileField.Of(Members.Currency, "currency", FileValues.Currency),
        FileField.Of(Members.Notes, "notes", FileValues.Pieces),
        FileField.Of(Members.OnHand, "onHand", new CountsValue(() => Members.OnHand)),
        FileField.Of(Members.Source, "source", BankFormat.Value),
        FileField.Of(Members.Pots, "pots", new ItemsValue<PotDraft>(new(
            FileField.OfItem<PotDraft>(ItemMembers.Name, "name"),
            FileField.Always(PotDraft.Members.Amount, "amount", FileValues.Amount),
            FileField.Of(PotDraft.Members.TopNote, "topNote", FileValues.Piece),
            FileField.Of(PotDraft.Members.Small, "small", SmallMoneyFormat.Value)))));

    public static class Members
    {
        public static DraftMember<NotesDraft, Currency?> Currency { get; } = new(file => file.Currency, (file, value) => file with { Currency = value });

        public static DraftMember<NotesDraft, ImmutableArray<decimal>?> Notes { get; } = new(file => file.Notes, (file, value) => file with { Notes = value });

        public static DraftMember<NotesDraft, ImmutableArray<NoteCountDraft>?> OnHand { get; } = new(file => file.OnHand, (file, value) => file with { OnHand = value });

        public static DraftMember<NotesDraft, BankDraft?> Source { get; } = new(file => file.Source, (file, value) => file with { Source = value });

        public static DraftMember<NotesDraft, ImmutableArray<PotDraft>?> Pots { get; } = new(file => file.Pots, (file, value) => file with { Pots = value });
    }
}
