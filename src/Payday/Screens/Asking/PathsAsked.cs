using Payday.Screens.Shell;

namespace Payday.Screens.Asking;

/// <summary>Paths of the bank's files, typed one by one or pasted line by line.</summary>
/// <param name="add">Takes one path; returns what is wrong with it, or null.</param>
/// <param name="added">What happens once one was taken.</param>
internal sealed class PathsAsked(Func<string, string?> add, Action added)
{
    /// <summary>One path.</summary>
    public CellEdit One() => new("Path of a file or folder", "", Add) { Most = CellEdit.Long };

    /// <summary>One path after the other, until nothing is typed.</summary>
    /// <param name="isFirst">Whether none is there yet.</param>
    public CellEdit Several(bool isFirst)
    {
        bool ended = false;
        return new CellEdit(isFirst ? "Path of a file or folder" : "Another path (empty ends)", "", text =>
        {
            ended = text.Trim().Length == 0;
            return ended ? null : Add(text);
        })
        {
            Most = CellEdit.Long,
            Next = () => ended ? null : Several(isFirst: false),
        };
    }

    /// <summary>Takes pasted paths, up to the first that can't be.</summary>
    /// <returns>What is wrong with that one; null where all were taken.</returns>
    public string? Pasted(string text) =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(Add).FirstOrDefault(fault => fault is not null);

    private string? Add(string text)
    {
        string? fault = add(text);
        if (fault is null)
        {
            added();
        }

        return fault;
    }
}
