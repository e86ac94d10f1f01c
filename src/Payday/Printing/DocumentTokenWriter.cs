using System.Text;
using UglyToad.PdfPig.Tokens;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Writes a document's own encoding where the library would name the standard one.</summary>
/// <remarks>
/// The library writes its standard fonts with StandardEncoding, which has no accented letters, and puts others in
/// their place without a word. It has no setting for that, but its writer may be derived from.
/// </remarks>
internal sealed class DocumentTokenWriter(DocumentEncoding encoding) : TokenWriter
{
    /// <inheritdoc/>
    protected override void WriteName(NameToken name, Stream outputStream)
    {
        if (name.Equals(NameToken.StandardEncoding))
        {
            outputStream.Write(Encoding.ASCII.GetBytes(encoding.PdfObject));
        }
        else
        {
            base.WriteName(name, outputStream);
        }
    }
}
