namespace Payday.Screens.Terminals;

/// <summary>Does something no more often than every so many milliseconds, however often it is asked to.</summary>
/// <param name="milliseconds">How long it rests in between.</param>
/// <param name="ask">What is asked; true where something is to be shown.</param>
internal sealed class NowAndThen(int milliseconds, Func<bool> ask)
{
    private long next = Environment.TickCount64 + milliseconds;

    /// <summary>Asks, where it is time.</summary>
    /// <returns>What it said; false where it was not asked.</returns>
    public bool Ask()
    {
        if (Environment.TickCount64 < next)
        {
            return false;
        }

        bool said = ask();
        next = Environment.TickCount64 + milliseconds;
        return said;
    }
}
