namespace Payday.Statements.Reading.Mt940;

/// <summary>One message as its fields come by: a statement, or a page of one.</summary>
internal sealed class Mt940Page(int place)
{
    /// <summary>The line of the file where it begins.</summary>
    public int Place { get; } = place;

    /// <summary>Field 20.</summary>
    public string Id { get; set; } = "";

    /// <summary>Field 25.</summary>
    public string Account { get; set; } = "";

    /// <summary>Field 28C.</summary>
    public string Number { get; set; } = "";

    /// <summary>Field 60F or 60M.</summary>
    public Mt940Field? Opening { get; set; }

    /// <summary>Field 62F or 62M.</summary>
    public Mt940Field? Closing { get; set; }

    /// <summary>The lines that are built like one.</summary>
    public List<Mt940Entry> Entries { get; } = [];

    /// <summary>The lines that aren't.</summary>
    public List<Mt940Field> Broken { get; } = [];

    /// <summary>Whether it has anything of a statement.</summary>
    public bool HasContent => Opening is not null || Closing is not null || Entries.Count > 0 || Broken.Count > 0;

    /// <summary>Whether the next page of the same statement follows: it closes in between and the other opens so.</summary>
    public bool GoesOnIn(Mt940Page next) => Closing is { Tag: "62M" } && next.Opening is { Tag: "60M" } && next.Account == Account;

    /// <summary>Takes the next page of the same statement in.</summary>
    public void TakeIn(Mt940Page next)
    {
        Closing = next.Closing;
        Entries.AddRange(next.Entries);
        Broken.AddRange(next.Broken);
    }
}
