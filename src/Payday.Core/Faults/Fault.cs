namespace Payday.Core.Faults;

/// <summary>Why something can't be done, or what is to be told of it: which of a feature's cases, and the values it is about.</summary>
/// <remarks>
/// Each feature has its own cases as sealed records. Their members are values - amounts, dates, numbers, names, ids -, never a sentence
/// nor a piece of one: the text that a person reads is made where it is shown, so that a form, a command and a file can each say it
/// their way, and no code has to read a sentence.
/// </remarks>
public abstract record Fault
{
    /// <summary>For the time in which some rules still make their sentences themselves.</summary>
    public static implicit operator Fault(string sentence) => new PlainFault(sentence);

    /// <summary>For the time in which some rules still make their sentences themselves.</summary>
    [return: System.Diagnostics.CodeAnalysis.NotNullIfNotNull(nameof(fault))]
    public static implicit operator string?(Fault? fault) => fault is PlainFault plain ? plain.Sentence : fault?.ToString();
}
