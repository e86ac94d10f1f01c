using Payday.Core.Amounts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Pots;
using Payday.Texts;

namespace Payday.Commands;

/// <summary>Reads pots as a person names them, and what stands beside them.</summary>
internal static class PotInput
{
    /// <summary>What the buffer is called on a command line.</summary>
    public const string Buffer = "buffer";

    /// <summary>A pot by its name, whatever the case, or by its id.</summary>
    public static Result<Pot> Pot(Household household, string text) =>
        (household.Pots.FirstOrDefault(pot => string.Equals(pot.Name, text.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? household.Pots.FirstOrDefault(pot => pot.Id.Text == text.Trim())) is { } pot
            ? Result.Of(pot)
            : Result.Refused<Pot>(new ArgumentFault.NoSuchPot(text.Trim(), [.. household.Pots.Select(known => known.Name)]));

    /// <summary>A pot's id, or null for the buffer.</summary>
    public static Result<PotOrBuffer> PotOrBuffer(Household household, string text)
    {
        Result<Pot> pot = Pot(household, text);
        return pot.Ok ? Result.Of(new PotOrBuffer(pot.Value.Id))
            : string.Equals(text.Trim(), Buffer, StringComparison.OrdinalIgnoreCase) ? Result.Of(new PotOrBuffer(null))
            : Result.Refused<PotOrBuffer>(pot.Fault);
    }

    /// <summary>Splits <c>NAME=VALUE</c> at the last equals sign: a name may hold one, what stands behind it can't.</summary>
    public static (string Name, string Value)? Pair(string text) =>
        text.LastIndexOf('=') is > 0 and var at ? (text[..at], text[(at + 1)..]) : null;
}

/// <summary>A pot's id; null stands for the buffer.</summary>
internal sealed record PotOrBuffer(PotId? PotId);
