namespace Payday.Questions;

/// <summary>Which question of a part is asked. The questions there are may change with each answer, so it goes by their names.</summary>
/// <param name="part">The part.</param>
internal sealed class PartPlace(Part part)
{
    private const string AtEnd = "\n";

    // Where the question was, for when an answer did away with it.
    private int index;

    /// <summary>The part.</summary>
    public Part Part { get; } = part;

    /// <summary>The name of the question; null before the first was reached.</summary>
    public string? At { get; set; }

    /// <summary>Goes to the question to ask.</summary>
    /// <param name="all">The questions there are now.</param>
    /// <returns>It; null past the last one.</returns>
    public Question? Reach(IReadOnlyList<Question> all)
    {
        int at = At == AtEnd ? all.Count : IndexOf(all, At);
        if (at < 0)
        {
            at = At is null || index == 0 ? Math.Max(0, IndexOf(all, Part.First)) : index;
        }

        if (at >= all.Count)
        {
            return null;
        }

        (At, index) = (all[at].Id, at);
        return all[at];
    }

    /// <summary>Goes past a question that was answered, and past the details of what it is about.</summary>
    public void Forward(Question question)
    {
        IReadOnlyList<Question> all = Part.Questions;
        int at = IndexOf(all, question.Id);
        int next = at < 0 ? index : at + 1;
        while (!question.IsDetail && next < all.Count && all[next].IsDetail)
        {
            next++;
        }

        (At, index) = (next < all.Count ? all[next].Id : AtEnd, next);
    }

    /// <summary>Goes to the question before one.</summary>
    /// <returns>Whether there is one.</returns>
    public bool Back(Question question)
    {
        IReadOnlyList<Question> all = Part.Questions;
        int before = index - 1;
        while (!question.IsDetail && before > 0 && all[before].IsDetail)
        {
            before--;
        }

        if (before < 0)
        {
            return false;
        }

        At = all[before].Id;
        return true;
    }

    private static int IndexOf(IReadOnlyList<Question> all, string? id) => all.ToList().FindIndex(question => question.Id == id);
}
