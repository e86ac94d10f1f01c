using NodaTime;
using Payday.Store.Files;

namespace Payday.Store.Checks;

/// <summary>Since when something is wrong. One of the nested cases.</summary>
public abstract record FindingSince
{
    private FindingSince()
    {
    }

    /// <summary>Since the beginning.</summary>
    public sealed record Beginning : FindingSince;

    /// <summary>Since a change.</summary>
    /// <param name="Mark">The change.</param>
    public sealed record Change(ChangeMark Mark) : FindingSince;

    /// <summary>Since a payday.</summary>
    /// <param name="Day">Its day.</param>
    public sealed record Payday(LocalDate Day) : FindingSince;
}
