using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.HouseholdChanges;

/// <summary>Why a household can't be put in the place of another in a book that goes on.</summary>
/// <remarks>Things are named as the person calls them.</remarks>
public abstract record ChangeFault : Fault
{
    /// <summary>The currency is another than the ledger's.</summary>
    /// <param name="Ledger">That of the ledger.</param>
    /// <param name="Next">That of the household.</param>
    public sealed record OtherCurrency(Currency Ledger, Currency Next) : ChangeFault;

    /// <summary>The start is another, and there is a history since.</summary>
    /// <param name="Start">The start as it was.</param>
    public sealed record OtherStart(LocalDate Start) : ChangeFault;

    /// <summary>An opening balance is another, and there is a history since.</summary>
    public sealed record OtherOpening : ChangeFault;

    /// <summary>A debt is gone on which something is still owed.</summary>
    /// <param name="DebtId">The debt.</param>
    /// <param name="Debt">What the person calls it.</param>
    /// <param name="Owed">What is owed.</param>
    public sealed record DebtOwed(DebtId DebtId, string Debt, Money Owed) : ChangeFault;

    /// <summary>A debt is gone for whose payments something waits in the account.</summary>
    /// <param name="DebtId">The debt.</param>
    /// <param name="Debt">What the person calls it.</param>
    /// <param name="Held">What waits.</param>
    public sealed record DebtHeld(DebtId DebtId, string Debt, Money Held) : ChangeFault;

    /// <summary>A bill is gone for which something is set aside.</summary>
    /// <param name="BillId">The bill.</param>
    /// <param name="Bill">What the person calls it.</param>
    /// <param name="Held">What is set aside.</param>
    public sealed record BillHeld(BillId BillId, string Bill, Money Held) : ChangeFault;

    /// <summary>A pot that has money is gone, or held elsewhere.</summary>
    /// <param name="PotId">The pot.</param>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Has">What it has.</param>
    public sealed record PotHas(PotId PotId, string Pot, Money Has) : ChangeFault;

    /// <summary>A pot that owes cash back is gone.</summary>
    /// <param name="PotId">The pot.</param>
    /// <param name="Pot">What the person calls it.</param>
    /// <param name="Owed">What it owes back.</param>
    public sealed record PotOwes(PotId PotId, string Pot, Money Owed) : ChangeFault;

    /// <summary>Money is on its way to what is gone.</summary>
    /// <param name="Id">The id of what is gone: a bill, a debt or a pot; the buffer never goes.</param>
    /// <param name="Name">What the person calls it.</param>
    /// <param name="Amount">How much.</param>
    public sealed record OnItsWay(string Id, string Name, Money Amount) : ChangeFault;
}
