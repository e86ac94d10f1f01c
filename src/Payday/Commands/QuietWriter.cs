using System.Text;

namespace Payday.Commands;

/// <summary>Writes what can be written and drops the rest: a full or closed error stream hinders no command, and turns no answer round.</summary>
/// <param name="inner">Where to.</param>
internal sealed class QuietWriter(TextWriter inner) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void Write(string? value) => Try(() => inner.Write(value));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => Try(() => inner.WriteLine(value));

    /// <inheritdoc/>
    public override void Flush() => Try(inner.Flush);

    private static void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            // There is no other place to say it.
        }
    }
}
