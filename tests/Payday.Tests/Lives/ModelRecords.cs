namespace Payday.Tests.Lives;

/// <summary>A due of a bill: which of its dates it is, so that two on one day stay two.</summary>
internal sealed record ModelDue(string Bill, int Index, DateOnly Date, long Amount, bool Paid);

/// <summary>A part of a pot's cash, for the wallet on a day; a pot that is saved gets it at home.</summary>
/// <param name="Week">The fill day, or null where there is none.</param>
internal sealed record ModelPart(DateOnly Payday, DateOnly? Week, string Pot, long Amount)
{
    public DateOnly Day => Week ?? Payday;
}

/// <summary>A card purchase.</summary>
internal sealed record ModelPurchase(int Number, DateOnly On, string Pot, long Amount, long OwedBack)
{
    public bool Undone { get; init; }

    public string Act => $"purchase {Number}";
}

/// <summary>A count of one pot.</summary>
/// <param name="Facts">How many facts there were once it was written.</param>
internal sealed record ModelCount(int Number, DateOnly On, string Pot, long Left, long Difference, string? Then, int Facts);

/// <summary>Cash that a pot owes: what it is for, and how much of it is still to be brought to the bank.</summary>
/// <param name="Short">What the account paid and hasn't back.</param>
/// <param name="Then">Where it goes instead, for what moves on.</param>
internal sealed record ModelOwed(string Pot, DateOnly On, long Left, long Short, string? Then);

/// <summary>A closed payday.</summary>
internal sealed record ModelClosed(DateOnly On, DateOnly Until, IReadOnlyList<ModelDue> Dues, IReadOnlyDictionary<string, long> Fills, IReadOnlyList<ModelPart> Parts, IReadOnlyList<ModelMinimum> Minimums)
{
    public string Act => $"payday {On:yyyy-MM-dd}";
}
