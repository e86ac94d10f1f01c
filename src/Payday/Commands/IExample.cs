namespace Payday.Commands;

/// <summary>Something that help shows an example of.</summary>
internal interface IExample
{
    /// <summary>A line to try or to change.</summary>
    string Example { get; }
}
