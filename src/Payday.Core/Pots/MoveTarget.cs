using Payday.Core.Ids;

namespace Payday.Core.Pots;

/// <summary>Where money can go that a pot or a surplus has left: a pot, a debt, or the account's buffer; a surplus also to a bill. One of the nested cases.</summary>
public abstract record MoveTarget
{
    private MoveTarget()
    {
    }

    /// <summary>Which of the cases it is.</summary>
    public abstract PlacementTarget Kind { get; }

    /// <summary>The id of the pot, debt or bill as stored; empty for the buffer.</summary>
    public abstract string IdText { get; }

    /// <summary>A pot.</summary>
    public sealed record ToPot(PotId Id) : MoveTarget
    {
        /// <inheritdoc/>
        public override PlacementTarget Kind => PlacementTarget.Pot;

        /// <inheritdoc/>
        public override string IdText => Id.Text;
    }

    /// <summary>An extra payment on a debt.</summary>
    public sealed record ToDebt(DebtId Id) : MoveTarget
    {
        /// <inheritdoc/>
        public override PlacementTarget Kind => PlacementTarget.Debt;

        /// <inheritdoc/>
        public override string IdText => Id.Text;
    }

    /// <summary>What is set aside for a bill; of a surplus alone.</summary>
    public sealed record ToBill(BillId Id) : MoveTarget
    {
        /// <inheritdoc/>
        public override PlacementTarget Kind => PlacementTarget.Bill;

        /// <inheritdoc/>
        public override string IdText => Id.Text;
    }

    /// <summary>The account's buffer.</summary>
    public sealed record ToBuffer : MoveTarget
    {
        /// <inheritdoc/>
        public override PlacementTarget Kind => PlacementTarget.Buffer;

        /// <inheritdoc/>
        public override string IdText => "";
    }

    /// <summary>The account's buffer.</summary>
    public static MoveTarget Buffer { get; } = new ToBuffer();

    /// <summary>A pot.</summary>
    public static MoveTarget Pot(PotId id) => new ToPot(id);

    /// <summary>An extra payment on a debt.</summary>
    public static MoveTarget Debt(DebtId id) => new ToDebt(id);

    /// <summary>What is set aside for a bill.</summary>
    public static MoveTarget Bill(BillId id) => new ToBill(id);
}
