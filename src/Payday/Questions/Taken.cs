namespace Payday.Questions;

/// <summary>What became of an answer. One of the nested cases.</summary>
/// <param name="Said">What is said of it; empty for nothing.</param>
internal abstract record Taken(string Said)
{
    /// <summary>It was taken; on to the next question.</summary>
    public static Taken On { get; } = new Next("");

    /// <summary>It was taken; on to the next question.</summary>
    public sealed record Next(string Said) : Taken(Said);

    /// <summary>It was taken, and the question is asked again as it stands now.</summary>
    public sealed record Again(string Said) : Taken(Said);

    /// <summary>It was not taken: why, and what to do.</summary>
    public sealed record Refused(string Said) : Taken(Said);

    /// <summary>It leads to another question of the same part.</summary>
    /// <param name="Id">The question.</param>
    /// <param name="Said">What is said of it; empty for nothing.</param>
    public sealed record To(string Id, string Said = "") : Taken(Said);

    /// <summary>It leads into another part, at whose end this one goes on.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Said">What is said of it; empty for nothing.</param>
    public sealed record Into(Part Part, string Said = "") : Taken(Said);

    /// <summary>The part is done with.</summary>
    public sealed record Done(string Said) : Taken(Said);

    /// <summary>The person leaves.</summary>
    public sealed record Stop() : Taken("");

    /// <summary>Taken, or refused where there is a reason.</summary>
    /// <param name="fault">Why it isn't taken, or null.</param>
    /// <param name="said">What is said where it is.</param>
    public static Taken OrRefused(string? fault, Func<string> said) => fault is null ? new Next(said()) : new Refused(fault);
}
