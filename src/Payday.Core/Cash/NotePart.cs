using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Cash;

/// <summary>What one pot gets in one week: the piece of money that notes are chosen for.</summary>
/// <param name="Pot">The pot's stable name; parts of one pot may share money between their weeks.</param>
/// <param name="Name">What the person calls the pot.</param>
/// <param name="Week">The fill day, or null where the fill isn't split over weeks.</param>
/// <param name="Amount">Zero or more.</param>
/// <param name="Wishes">Which notes it wants.</param>
public sealed record NotePart(PotId Pot, string Name, LocalDate? Week, Money Amount, NoteWishes Wishes);
