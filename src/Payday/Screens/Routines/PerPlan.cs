using Payday.Core.Routines;

namespace Payday.Screens.Routines;

/// <summary>Something worked out from a routine, once for each that is looked at: a screen is drawn with every key.</summary>
/// <param name="work">Works it out.</param>
internal sealed class PerPlan<T>(Func<RoutinePlan, T> work)
{
    private RoutinePlan? known;
    private T? value;

    /// <summary>What it comes to for a routine.</summary>
    public T Of(RoutinePlan plan)
    {
        if (!ReferenceEquals(plan, known))
        {
            value = work(plan);
            known = plan;
        }

        return value!;
    }
}
