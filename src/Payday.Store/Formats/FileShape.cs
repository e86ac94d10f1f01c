using System.Collections.Immutable;

namespace Payday.Store.Formats;

/// <summary>What a value of a file looks like, as data: what a schema or a manual of the file is made from. One of the nested cases.</summary>
public abstract record FileShape
{
    private FileShape()
    {
    }

    /// <summary>A line of text.</summary>
    public sealed record Line : FileShape;

    /// <summary>An amount in quotes.</summary>
    public sealed record Amount : FileShape;

    /// <summary>A fraction in quotes.</summary>
    public sealed record Fraction : FileShape;

    /// <summary>A date such as <c>2026-03-05</c>.</summary>
    public sealed record Date : FileShape;

    /// <summary>True or false.</summary>
    public sealed record Flag : FileShape;

    /// <summary>A whole number, both ends included.</summary>
    public sealed record Count(int Least, int Most) : FileShape;

    /// <summary>One of some words.</summary>
    public sealed record Word(ImmutableArray<string> Words) : FileShape;

    /// <summary>A list of at most so many.</summary>
    public sealed record List(FileShape Item, int Most) : FileShape;

    /// <summary>How many there are of each note or coin, by its value.</summary>
    public sealed record Counts(FileShape Item) : FileShape;

    /// <summary>An object with some fields, each of which may be left out as far as the others allow it.</summary>
    public sealed record Object(ImmutableArray<(string Name, FileShape Shape)> Fields) : FileShape;

    /// <summary>One of some shapes.</summary>
    public sealed record Either(ImmutableArray<FileShape> Shapes) : FileShape;
}
