namespace Payday.Store.Files;

/// <summary>The store could not do what was asked. The message is one sentence meant for the person.</summary>
public sealed class StoreException : Exception
{
    /// <summary>A refusal with its reason.</summary>
    public StoreException(string message)
        : base(message)
    {
    }

    /// <summary>A refusal with its reason and what lies behind it.</summary>
    public StoreException(string message, Exception inner)
        : base(message, inner)
    {
    }

    /// <summary>Whether what is stored is damaged, so that another attempt would not help.</summary>
    internal bool IsDamage { get; init; }

    /// <summary>Whether another process has the folder, so that a look is all there is.</summary>
    public bool IsTaken { get; internal init; }
}
