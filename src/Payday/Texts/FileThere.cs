using Payday.Core.Faults;

namespace Payday.Texts;

/// <summary>A file that was to be written is there already.</summary>
/// <param name="Shown">Its path, fit to be shown.</param>
internal sealed record FileThere(string Shown) : Fault
{
    /// <summary>The sentence, with what can be done about it here.</summary>
    /// <param name="todo">What to do.</param>
    public string Saying(string todo) => $"{Shown} is already there; {todo}.";
}
