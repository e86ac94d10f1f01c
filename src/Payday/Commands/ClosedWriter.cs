using System.Text;

namespace Payday.Commands;

/// <summary>Standard output that the shell closed.</summary>
internal sealed class ClosedWriter : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => Encoding.UTF8;

    /// <inheritdoc/>
    public override void Write(char value) => throw new IOException("It is closed.");
}
