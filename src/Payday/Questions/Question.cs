using System.Collections.Immutable;

namespace Payday.Questions;

/// <summary>A question, its proposal in it, and what an answer does.</summary>
/// <param name="Id">A word or some by which it is found again: the same as long as it asks for the same.</param>
/// <param name="Text">What is asked, with the proposal and the name of every amount: it is read aloud.</param>
/// <param name="Take">What an answer does; an empty one takes the proposal.</param>
internal sealed record Question(string Id, string Text, Func<string, Taken> Take)
{
    /// <summary>What it belongs to, such as a step. Where that is another than before, <see cref="Heading"/> is said first.</summary>
    public string Under { get; init; } = "";

    /// <summary>What is said before the first question of what it belongs to, a sentence or some each.</summary>
    public Func<IEnumerable<string>> Heading { get; init; } = () => [];

    /// <summary>What can be answered and why it is asked, a sentence or some each.</summary>
    public ImmutableArray<string> Help { get; init; } = [];

    /// <summary>Words that are explained with it; those of the program that stand in its text are besides.</summary>
    public IReadOnlyList<(string Word, string Meaning)> Words { get; init; } = [];

    /// <summary>Whether it is only asked where an answer leads to it, as the notes of each pot are.</summary>
    public bool IsDetail { get; init; }
}
