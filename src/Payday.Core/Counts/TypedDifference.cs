using Payday.Core.Amounts;
using Payday.Core.Faults;

namespace Payday.Core.Counts;

/// <summary>What is missing or was found in a count, as a person writes it: <c>3</c>, <c>Lost coin=3</c> or <c>Lost coin</c>.</summary>
/// <param name="Amount">How much, if that is said; may be below zero.</param>
/// <param name="Name">What it is called; empty where no name is said.</param>
public sealed record TypedDifference(Money? Amount, string Name)
{
    /// <summary>The name of what has none.</summary>
    public const string Unknown = "unknown";

    private const char Before = '=';

    /// <summary>Reads it.</summary>
    /// <param name="text">One clean line.</param>
    /// <param name="currency">The household's currency.</param>
    /// <param name="style">How its numbers are written.</param>
    /// <returns>What it says, or why what stands for the amount is none.</returns>
    public static Result<TypedDifference> Read(string text, Currency currency, NumberStyle style)
    {
        ArgumentNullException.ThrowIfNull(text);
        int at = text.LastIndexOf(Before);
        Result<Money> amount = Money.ParseSum(text[(at + 1)..], currency, style);
        return amount.Ok ? Result.Of(new TypedDifference(amount.Value, text[..Math.Max(0, at)].Trim()))
            : at < 0 ? Result.Of(new TypedDifference(null, text.Trim()))
            : Result.Refused<TypedDifference>(amount.Fault);
    }

    /// <summary>As it is written, e.g. <c>Lost coin=3.00</c>.</summary>
    /// <param name="amount">How much.</param>
    /// <param name="name">What it is called; empty or <see cref="Unknown"/> for no name.</param>
    /// <param name="style">How numbers are written.</param>
    public static string Write(Money amount, string name, NumberStyle style) =>
        name is "" or Unknown ? amount.ToString(style) : $"{name}{Before}{amount.ToString(style)}";

    /// <summary>What it is to be called: its name, else the one that there was before, else that it is unknown.</summary>
    /// <param name="before">The name there was; may be empty.</param>
    public string NameOr(string before) => Name.Length > 0 ? Name : before is { Length: > 0 } ? before : Unknown;
}
