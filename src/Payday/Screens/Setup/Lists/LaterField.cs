using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Drafts;
using Payday.Screens.Setup.Fields;
using Payday.Text;

namespace Payday.Screens.Setup.Lists;

/// <summary>The field of what an amount changes to, and how a list shows it.</summary>
internal static class LaterField
{
    /// <summary>The field.</summary>
    public static SetupField<TItem> Of<TItem>(DraftMember<TItem, ImmutableArray<LaterDraft>?> later) =>
        SetupFields.Of("Changes to", later, new LaterType(), "What it is from a date on, like 1480 from 1 Jan 2027; several with commas between them. Empty while it stays as it is.").Optional();

    /// <summary>The amount of today as a list shows it; empty where there is none.</summary>
    public static string Now(decimal? first, ImmutableArray<LaterDraft>? later, SetupFacts facts) =>
        LaterDraft.On(first, later, facts.Today) is { } amount ? AmountType.Shown(amount, facts) : "";

    /// <summary>The next change after some words, such as <c>, 1,480.00 from 1 Jan 2027</c>; empty where none is to come.</summary>
    public static string Next(ImmutableArray<LaterDraft>? later, SetupFacts facts) =>
        (later ?? []).FirstOrDefault(change => change.From > facts.Today) is { From: { } from, Amount: { } amount }
            ? $", {AmountType.Shown(amount, facts)} from {DateText.Day(from)}"
            : "";
}
