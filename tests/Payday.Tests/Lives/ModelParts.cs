namespace Payday.Tests.Lives;

/// <summary>Who pays; amounts are in cents.</summary>
internal sealed record ModelSource(string Name, long Expected, DateOnly[] Dates, bool InWeeks)
{
    /// <summary>What it pays from a payday on.</summary>
    public (DateOnly From, long Amount)? Later { get; init; }

    public long On(DateOnly payday) => Later is { } later && payday >= later.From ? later.Amount : Expected;
}

/// <summary>A bill, with every date on which it is due.</summary>
internal sealed record ModelBill(string Name, long Amount, bool Essential, DateOnly[] Dates, long SetAside)
{
    /// <summary>What it comes to from a due on, by the day on which that is there.</summary>
    public (DateOnly From, long Amount)? Later { get; init; }

    public long On(DateOnly due) => Later is { } later && due >= later.From ? later.Amount : Amount;
}

/// <summary>A debt; its minimum is the larger of a floor and a part of the balance.</summary>
internal sealed record ModelDebt(string Name, long Balance, decimal Rate, decimal Percent, long Floor, int Day)
{
    /// <summary>A month's interest: balance x rate / 12, half to even.</summary>
    public long Interest(long balance) => (long)Math.Round(balance * Rate / 12, MidpointRounding.ToEven);

    /// <summary>The least that must be paid before the cap at what is owed.</summary>
    public long Nominal(long balance) => Math.Max(Floor, (long)Math.Round(balance * Percent, MidpointRounding.ToEven));

    /// <summary>The least that must be paid.</summary>
    public long Minimum(long balance) => Math.Min(Nominal(balance), balance + Interest(balance));
}

/// <summary>A pot.</summary>
/// <param name="Kind">week, payday, month, spread, sinking, ladder or reserve.</param>
/// <param name="Amount">A spending amount, a target, a ladder's unit, a reserve's part a payday.</param>
internal sealed record ModelPot(string Name, string Kind, long Amount, bool Cash, int Rank, long Floor = 0, long Has = 0)
{
    /// <summary>Where what a count finds left goes: a pot's or debt's name, buffer, or null where it stays.</summary>
    public string? Then { get; init; }

    /// <summary>A sinking pot's date.</summary>
    public DateOnly By { get; init; }

    /// <summary>A ladder's steps, a reserve's level in cents.</summary>
    public long Most { get; init; }

    /// <summary>What a spending amount, or a reserve's level, is from a day on.</summary>
    public (DateOnly From, long Amount)? Later { get; init; }

    public long On(DateOnly day) => Later is { } later && day >= later.From ? later.Amount : Kind == "reserve" ? Most : Amount;

    /// <summary>The largest note it takes, or zero.</summary>
    public long TopNote { get; init; }

    /// <summary>Whether it is spent, not saved.</summary>
    public bool Spends => Kind is "week" or "payday" or "month" or "spread";

    /// <summary>Whether its cash goes through the wallet.</summary>
    public bool InWallet => Cash && Spends;

    /// <summary>The steps that its money comes in: a note of five, or a cent.</summary>
    public long Unit => Cash ? 500 : 1;
}
