using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Slips;

/// <summary>What a filling sheet says: which notes go where once the person is home.</summary>
/// <param name="Date">The payday.</param>
/// <param name="Currency">Of every note.</param>
/// <param name="Style">How numbers are written.</param>
/// <param name="HeadLines">What the person wants at the top.</param>
/// <param name="Rows">One for each pot and week, in the order of filling.</param>
/// <param name="Withdrawn">The notes of the slip.</param>
/// <param name="FromHome">Notes that were at home and are used again.</param>
/// <param name="ToBank">Notes that go back to the bank instead of into a pot.</param>
/// <param name="KeptBack">What no note can make.</param>
internal sealed record FillingSheetData(
    LocalDate Date,
    Currency Currency,
    NumberStyle Style,
    ImmutableArray<string> HeadLines,
    ImmutableArray<FillingRow> Rows,
    ImmutableArray<NoteLine> Withdrawn,
    ImmutableArray<NoteLine> FromHome,
    ImmutableArray<NoteLine> ToBank,
    ImmutableArray<KeptBackLine> KeptBack)
{
    /// <summary>Notes of the bank that no pot takes: they stay at home, loose.</summary>
    public ImmutableArray<NoteLine> Loose { get; init; } = [];

    /// <summary>Whose the loose notes are, in a sentence; empty where there are none.</summary>
    public string LooseOf { get; init; } = "";

    /// <summary>What is to be paid on debts above their minimums, with their names: nothing else reminds of it.</summary>
    public ImmutableArray<KeptBackLine> ToPay { get; init; } = [];

    /// <summary>Whether these are the notes that the bank gave, and not those the slip asked for.</summary>
    public bool AsReceived { get; init; }
}

/// <summary>The notes that go into one pot for one week.</summary>
/// <param name="Pot">The pot's name.</param>
/// <param name="Week">The fill day the week begins on, or null for a pot that is not split into weeks.</param>
/// <param name="Notes">The notes, in any order.</param>
internal sealed record FillingRow(string Pot, LocalDate? Week, ImmutableArray<NoteLine> Notes);

/// <summary>The part of a pot's fill that stays in the account because no note can make it.</summary>
/// <param name="Pot">The pot's name.</param>
/// <param name="Amount">Zero or more.</param>
internal sealed record KeptBackLine(string Pot, Money Amount);
