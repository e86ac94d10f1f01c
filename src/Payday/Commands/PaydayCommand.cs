using System.CommandLine;

namespace Payday.Commands;

/// <summary>A command with an example of its use.</summary>
/// <param name="name">What a person types.</param>
/// <param name="what">What it does, a sentence or two.</param>
/// <param name="example">A line to try or to change.</param>
internal sealed class PaydayCommand(string name, string what, string example) : Command(name, what), IExample
{
    /// <inheritdoc/>
    public string Example => example;
}
