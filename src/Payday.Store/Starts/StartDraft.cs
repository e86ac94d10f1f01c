using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Drafts;

namespace Payday.Store.Starts;

/// <summary>A household that is being set up for the first time.</summary>
/// <param name="Household">What was entered so far.</param>
/// <param name="Passed">The parts that were gone through, by name.</param>
/// <param name="Begun">Items that were begun and aren't complete yet.</param>
/// <remarks>
/// It is no household of the store before it is begun: until then the currency may change, and what was there at
/// the start is written to the ledger once, when it is known.
/// </remarks>
public sealed record StartDraft(HouseholdDraft Household, ImmutableSortedSet<string> Passed, BegunItems Begun)
{
    /// <summary>What a household is called before it has another name.</summary>
    public const string UsualName = "Our household";

    /// <summary>The bank's files that it is set up from.</summary>
    public StartStatements Statements { get; init; } = StartStatements.None;

    /// <summary>One with nothing in it but the usual choices.</summary>
    public static StartDraft Fresh(LocalDate today) => new(
        new()
        {
            Name = UsualName,
            Start = today,
            Settings = new()
            {
                Numbers = NumberStyle.CommaPoint,
                FillDay = IsoDayOfWeek.Friday,
                Holidays = new() { Set = HolidaySet.None },
                Bank = new() { Kind = BankKind.Teller },
            },
            Opening = new() { Account = 0 },
        },
        ImmutableSortedSet.Create<string>(StringComparer.Ordinal),
        BegunItems.None);
}
