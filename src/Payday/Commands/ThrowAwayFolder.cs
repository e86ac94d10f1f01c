namespace Payday.Commands;

/// <summary>A temporary folder, removed when it is disposed of or when the process exits without that, as after a signal.</summary>
internal sealed class ThrowAwayFolder : IDisposable
{
    public ThrowAwayFolder(string prefix)
    {
        Path = Directory.CreateTempSubdirectory(prefix).FullName;
        AppDomain.CurrentDomain.ProcessExit += OnExit;
    }

    /// <summary>The folder.</summary>
    public string Path { get; }

    /// <inheritdoc/>
    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= OnExit;
        Directory.Delete(Path, recursive: true);
    }

    private void OnExit(object? sender, EventArgs e)
    {
        try
        {
            Directory.Delete(Path, recursive: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // Nobody is left to be told; the system empties its folder of temporary files in time.
        }
    }
}
