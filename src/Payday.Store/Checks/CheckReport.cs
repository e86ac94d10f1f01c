using System.Collections.Immutable;

namespace Payday.Store.Checks;

/// <summary>What a whole check looked at and found.</summary>
/// <param name="Changes">Changes in the journal.</param>
/// <param name="Movements">Movements in the ledger.</param>
/// <param name="ClosedPaydays">Closed paydays.</param>
/// <param name="Backups">Backups that are whole.</param>
/// <param name="Findings">What is wrong; empty where nothing is.</param>
public sealed record CheckReport(long Changes, int Movements, int ClosedPaydays, int Backups, ImmutableArray<Finding> Findings);
