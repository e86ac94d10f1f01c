using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Drafts;

namespace Payday.Screens.Setup.Fields;

/// <summary>What fields need to know of the household that is worked on.</summary>
internal abstract class SetupFacts
{
    /// <summary>The household as it was entered so far.</summary>
    public abstract HouseholdDraft Draft { get; }

    /// <summary>The date.</summary>
    public abstract LocalDate Today { get; }

    /// <summary>Whether a household may be stored that isn't complete yet.</summary>
    public abstract bool TakesParts { get; }

    /// <summary>Whether a payday has been closed, so that the start is history.</summary>
    public abstract bool HasHistory { get; }

    /// <summary>The currency; the one without decimals that means none where it isn't known yet.</summary>
    public Currency Currency => Draft.Settings.Currency ?? default;

    /// <summary>How numbers are written.</summary>
    public NumberStyle Style => Draft.Settings.Numbers ?? NumberStyle.CommaPoint;

    /// <summary>The notes in use, largest first.</summary>
    public ImmutableArray<decimal> Notes => Draft.Settings.Notes ?? [];

    /// <summary>What is owed on a debt today, in whole units; null where nothing is known of it.</summary>
    public abstract decimal? Owed(DebtDraft debt);
}
