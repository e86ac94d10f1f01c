using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ids;
using Payday.Core.Ledgers;

namespace Payday.Core.AccountEntries;

/// <summary>Money that came in or went out, to be entered.</summary>
/// <param name="Date">The day.</param>
/// <param name="Kind">What it is.</param>
/// <param name="For">The purpose that gets or gives it, with its place, or the debt it belongs to; a pot in cash stands for its envelope.</param>
/// <param name="Amount">Above zero where it came in, or raises what is there; below zero where it went out, or raises what is owed.</param>
/// <param name="What">What it was, in a few words; may be empty.</param>
public sealed record EntryWish(LocalDate Date, EntryKind Kind, LedgerEnd For, Money Amount, string What)
{
    /// <summary>The number of the cheque it was paid by; null where it was none.</summary>
    public long? Cheque { get; init; }

    /// <summary>The notes, where it is cash and they are known; null else.</summary>
    public Notes? Notes { get; init; }

    /// <summary>Whether it is cash and not of the account; always so for the loose notes.</summary>
    public bool IsCash { get; init; }

    /// <summary>For income: the source that paid; null for one of no source, which goes by <see cref="What"/>.</summary>
    public SourceId? Source { get; init; }
}
