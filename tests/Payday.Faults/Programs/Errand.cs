using Payday.Core.Books;

namespace Payday.Faults.Programs;

/// <summary>One command that changes something.</summary>
/// <param name="Arguments">What follows the program's name and data folder.</param>
/// <param name="Told">What it prints once the change is stored.</param>
/// <param name="IsThere">Whether a book has the change.</param>
internal sealed record Errand(string[] Arguments, string Told, Func<Book, bool> IsThere)
{
    /// <summary>How many lines of the journal it makes.</summary>
    public int Changes { get; init; } = 1;
}
