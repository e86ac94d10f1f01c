using Payday.Core.Faults;

namespace Payday.Texts;

/// <summary>What the program's own edge refuses: an argument, a file, a printer. Its sentence is made where it is met, for it may hold the system's own words; nothing but a person reads it.</summary>
/// <param name="Sentence">What is wrong and what to do.</param>
internal sealed record EdgeFault(string Sentence) : Fault
{
    /// <summary>A refusal.</summary>
    public static Result<T> Refused<T>(string sentence) => Result.Refused<T>(new EdgeFault(sentence));
}
