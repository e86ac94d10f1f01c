using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Writer;

namespace Payday.Printing;

/// <summary>Text in the codes of a document's own encoding.</summary>
internal static class CodedText
{
    /// <summary>Adds a line.</summary>
    /// <param name="page">The page.</param>
    /// <param name="codes">See <see cref="DocumentEncoding.Encode"/>.</param>
    /// <param name="fontSize">In points.</param>
    /// <param name="start">Where it begins, on its base line.</param>
    /// <param name="font">The font.</param>
    public static void Add(PdfPageBuilder page, byte[] codes, double fontSize, PdfPoint start, PdfDocumentBuilder.AddedFont font)
    {
        // The library maps letters to codes of its own. So it sets up a line of one letter, and then that letter is
        // replaced by the codes of our encoding.
        page.AddText("x", fontSize, start, font);
        List<IGraphicsStateOperation> operations = page.CurrentStream.Operations;
        operations[operations.FindLastIndex(operation => operation is ShowText)] = new ShowText(codes);
    }
}
