using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Faults;

namespace Payday.Core.Fills;

/// <summary>Why a fill of the wallet can't be marked, or its mark can't be taken back.</summary>
public abstract record FillFault : Fault
{
    /// <summary>No closed payday has such a fill.</summary>
    /// <param name="Day">The fill day.</param>
    public sealed record NoSuchFill(LocalDate Day) : FillFault;

    /// <summary>It is marked so already.</summary>
    /// <param name="Pot">What the person calls the pot.</param>
    /// <param name="Day">The fill day.</param>
    /// <param name="State">How it is marked.</param>
    public sealed record MarkedAlready(string Pot, LocalDate Day, FillState State) : FillFault;

    /// <summary>The pot has too little at home for the fill to be as it was before.</summary>
    /// <param name="Pot">What the person calls the pot.</param>
    /// <param name="Needed">What the fill was.</param>
    public sealed record TooLittleAtHome(string Pot, Money Needed) : FillFault;
}
