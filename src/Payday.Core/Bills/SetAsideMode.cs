namespace Payday.Core.Bills;

/// <summary>How money is held back for bills.</summary>
public enum SetAsideMode
{
    /// <summary>The most even plan that is never late.</summary>
    Level,

    /// <summary>Each payday pays its own period.</summary>
    AsTheyFall,
}
