using System.Collections.Immutable;

namespace Payday.Screens.Setup.Forms;

/// <summary>A form: its rows, and what becomes of a change.</summary>
internal interface IItemForm
{
    /// <summary>The fields that there are, going by what stands in them.</summary>
    ImmutableArray<FormRow> Rows { get; }

    /// <summary>Whether it is of something to be added, which isn't stored yet.</summary>
    bool IsNew { get; }

    /// <summary>Whether what the form holds is what is stored.</summary>
    bool IsStored { get; }

    /// <summary>Whether it is of something to be added that is kept until it is complete.</summary>
    bool IsBegun { get; }

    /// <summary>Changes a row by what was typed; nothing typed empties a field that may be empty.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    string? Type(int row, string text);

    /// <summary>Changes a row to one of its choices.</summary>
    /// <returns>What is wrong with it, or null.</returns>
    string? Choose(int row, int choice);

    /// <summary>Forgets what was begun, and begins an empty one.</summary>
    void Restart();
}
