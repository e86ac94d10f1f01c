namespace Payday.Faults.Monkeys;

/// <summary>What a monkey does at a terminal. One of the nested cases.</summary>
internal abstract record Deed
{
    private Deed()
    {
    }

    /// <summary>Presses keys, or sends whatever a terminal may send.</summary>
    /// <param name="Bytes">As they are sent.</param>
    /// <param name="Count">For how many keys it counts.</param>
    public sealed record Send(byte[] Bytes, int Count) : Deed;

    /// <summary>Makes the terminal another size.</summary>
    public sealed record Resize(int Width, int Height) : Deed;

    /// <summary>Looks away: reads nothing of what is shown for a while, or waits.</summary>
    /// <param name="Milliseconds">How long.</param>
    /// <param name="Reads">Whether what is shown is read meanwhile.</param>
    public sealed record Pause(int Milliseconds, bool Reads) : Deed;
}
