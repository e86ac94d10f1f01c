using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Receiving;

/// <summary>Why notes that the bank gave can't be entered.</summary>
public abstract record ReceivingFault : Fault
{
    /// <summary>No payday is closed, so there is no slip.</summary>
    public sealed record NoSlip : ReceivingFault;

    /// <summary>The slip asks for nothing.</summary>
    /// <param name="Payday">The payday of the slip.</param>
    public sealed record NothingAsked(LocalDate Payday) : ReceivingFault;

    /// <summary>The day is before the payday.</summary>
    /// <param name="Payday">The payday of the slip.</param>
    /// <param name="Date">The day.</param>
    public sealed record BeforePayday(LocalDate Payday, LocalDate Date) : ReceivingFault;

    /// <summary>No note or coin in use has that value.</summary>
    /// <param name="Value">The value.</param>
    public sealed record NoSuchPiece(Money Value) : ReceivingFault;

    /// <summary>It is what the slip asks for, and nothing else was entered before.</summary>
    /// <param name="Payday">The payday of the slip.</param>
    public sealed record AsAsked(LocalDate Payday) : ReceivingFault;

    /// <summary>More was given than the buffer in the account and what it keeps back for pots can stand for.</summary>
    /// <param name="More">By how much it is more than the slip asks for.</param>
    /// <param name="Lacking">What lacks of that, above zero.</param>
    public sealed record TooMuch(Money More, Money Lacking) : ReceivingFault;

    /// <summary>No notes were entered for the last closed payday, so there is nothing to take back.</summary>
    public sealed record NothingEntered : ReceivingFault;
}
