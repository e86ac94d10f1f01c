namespace Payday.Questions;

/// <summary>A part of the work, as the questions that there are for it now. It keeps nothing of its own: what was decided is in the book.</summary>
internal abstract class Part
{
    /// <summary>By what it is found again: the same in every version, and another one for another payday or form.</summary>
    public abstract string Name { get; }

    /// <summary>All its questions in their order, as the book stands.</summary>
    public abstract IReadOnlyList<Question> Questions { get; }

    /// <summary>What is said where it has none.</summary>
    public abstract string Empty { get; }

    /// <summary>The question to begin with; null for the first.</summary>
    public virtual string? First => null;

    /// <summary>Told of each question before it is asked.</summary>
    public virtual void Reached(Question question)
    {
    }

    /// <summary>The question to go on with, where it was left at one; null for the first.</summary>
    /// <param name="at">The one it was left at.</param>
    public virtual string? GoesOnAt(string at) => at;

    /// <summary>The part of a name that an answer here leads into; null where there is none any more.</summary>
    public virtual Part? Open(string name) => null;
}
