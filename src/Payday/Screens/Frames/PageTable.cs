namespace Payday.Screens.Frames;

/// <summary>Where a table stands in a page, so that its headings can stay in view while its rows go by.</summary>
/// <param name="First">The line of its first heading, from 0.</param>
/// <param name="Headings">How many lines its headings take, the rule under them with them.</param>
/// <param name="Rows">How many lines its rows take.</param>
internal readonly record struct PageTable(int First, int Headings, int Rows)
{
    /// <summary>Whether the headings take the place of the first lines in view: they have gone by, and rows are still there.</summary>
    /// <param name="top">The first line in view, from 0.</param>
    public bool StaysAt(int top) => top > First && top + Headings < First + Headings + Rows;
}
