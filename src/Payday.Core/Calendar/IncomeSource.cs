using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;

namespace Payday.Core.Calendar;

/// <summary>Who pays the household, and when.</summary>
/// <param name="Id">Stable name that the ledger refers to.</param>
/// <param name="Name">What the person calls it.</param>
/// <param name="Schedule">When it pays.</param>
/// <param name="Shift">Where a payday on a weekend or bank holiday moves.</param>
/// <param name="Expected">What usually comes, zero or more; zero where it can't be foreseen.</param>
/// <param name="Until">The last date on which it pays, or null.</param>
public sealed record IncomeSource(
    SourceId Id,
    string Name,
    Schedule Schedule,
    Shift Shift,
    Money Expected,
    LocalDate? Until = null);
