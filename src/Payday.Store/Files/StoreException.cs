namespace Payday.Store.Files;

/// <summary>The store could not do what was asked. What a person is told is made of <see cref="Fault"/>; the message is for who looks for a fault of the program.</summary>
/// <param name="fault">Why.</param>
/// <param name="inner">What lies behind it.</param>
public sealed class StoreException(StoreFault fault, Exception? inner = null) : Exception(fault.ToString(), inner)
{
    /// <summary>Why.</summary>
    public StoreFault Fault { get; } = fault;
}
