using Payday.Text;

namespace Payday.Printing;

/// <summary>A file on its way to its place: first it is written beside it, then moved there, and it can be taken back until all is settled.</summary>
/// <param name="path">The full path of its place.</param>
/// <param name="content">All of it.</param>
internal sealed class NewFile(string path, byte[] content)
{
    private bool isPlaced;
    private bool hasReplaced;

    /// <summary>Its place.</summary>
    public string Path { get; } = path;

    /// <summary>All of it.</summary>
    public byte[] Content { get; } = content;

    /// <summary>Its place as it can be shown.</summary>
    public string Shown { get; } = CleanText.OneLine(path);

    /// <summary>Where it is written first.</summary>
    public string Beside { get; } = Hidden(path);

    private string Replaced { get; } = Hidden(path);

    /// <summary>Moves it to its place.</summary>
    /// <param name="replace">Whether what is there may go; it is kept until all is settled.</param>
    /// <exception cref="IOException">It can't be moved there.</exception>
    public void Place(bool replace)
    {
        if (replace && File.Exists(Path))
        {
            File.Move(Path, Replaced);
            hasReplaced = true;
        }

        File.Move(Beside, Path, replace);
        isPlaced = true;
    }

    /// <summary>All as it was before.</summary>
    public void TakeBack()
    {
        Try(() => File.Delete(isPlaced ? Path : Beside));
        if (hasReplaced)
        {
            Try(() => File.Move(Replaced, Path));
        }
    }

    /// <summary>It stays; what it replaced goes.</summary>
    public void Settle()
    {
        if (hasReplaced)
        {
            Try(() => File.Delete(Replaced));
        }
    }

    private static string Hidden(string path) =>
        System.IO.Path.Combine(System.IO.Path.GetDirectoryName(path) ?? "", $".{System.IO.Path.GetRandomFileName()}");

    private static void Try(Action work)
    {
        try
        {
            work();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The first fault is the one to report; what is left is a hidden file beside the place.
        }
    }
}
