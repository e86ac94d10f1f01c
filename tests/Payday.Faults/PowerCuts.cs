namespace Payday.Faults;

/// <summary>Cuts the power, in simulation.</summary>
internal static class PowerCuts
{
    public static bool Run(int seed) => seed > 0;
}
