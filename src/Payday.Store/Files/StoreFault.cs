using Payday.Core.Faults;

namespace Payday.Store.Files;

/// <summary>What the store refuses, found wrong or did about it. Each of its features has cases of its own; what is said of them is made where they are shown.</summary>
public abstract record StoreFault : Fault
{
    /// <summary>Whether what is stored is damaged, so that another attempt would not help.</summary>
    internal virtual bool IsDamage => false;
}
