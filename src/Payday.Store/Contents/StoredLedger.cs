using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Contents;

/// <summary>Makes a ledger of stored movements, which a damaged file may have lost some of.</summary>
internal static class StoredLedger
{
    /// <summary>The ledger, if it is whole.</summary>
    /// <param name="folder">Where it is stored.</param>
    /// <param name="household">Whose it is.</param>
    /// <param name="movements">The movements.</param>
    /// <param name="closed">The closed paydays in order.</param>
    /// <param name="weeks">What happened between them.</param>
    /// <exception cref="StoreException">A movement is missing, or they don't add up.</exception>
    public static Ledger Sound(StoreFolder folder, Household household, MovementColumn movements, ImmutableArray<ClosedPayday> closed, WeekRecords weeks)
    {
        if (movements.Missing is { } missing)
        {
            throw Missing(folder, missing);
        }

        int count = movements.Count;
        if (closed.Any(payday => payday.LastMovement > count) || weeks.LastMovement > count)
        {
            throw Missing(folder, count + 1);
        }

        Ledger ledger = movements.Ledger(household.Currency);
        return LedgerCheck.Damage(ledger.Balances).FirstOrDefault() is not { } fault
            ? ledger
            : throw new StoreException(new LedgerDamage.DoesNotAddUp(folder.Path, fault, household.Settings.Numbers));
    }

    private static StoreException Missing(StoreFolder folder, int number) => new(new LedgerDamage.MovementMissing(folder.Path, number));
}
